/* One left over: from where the reader stands, only those steps are to be undone that were done. Picking a row's
   number hides the others. */
const order = () => all("#left-at option").map((option) => option.value);

function lastTicked() {
  const done = all(".step").filter(
    (step) => !step.closest(".remedy") && all("input[type=checkbox]:not(.zoom)", step).some((box) => box.checked),
  );
  return done.length ? done[done.length - 1].id : "";
}

function showWay() {
  const ids = order();
  const at = one("left-at").value;
  const here = at ? ids.indexOf(at) : ids.length;
  all("table.mat tbody tr").forEach((row) => {
    const coming = ids.indexOf(row.dataset.step) > here;
    const links = all(".undo a", row);
    let seen = 0;
    links.forEach((link) => {
      const done = !coming && ids.indexOf(link.hash.slice(1).split("?")[0]) <= here;
      link.hidden = !done;
      seen += done;
      if (link.nextElementSibling) link.nextElementSibling.hidden = !done;
    });
    row.querySelector(".undo-say").textContent = coming ? say("left.coming") : seen ? "" : say("left.open");
  });
}

function pick(mark) {
  all("table.mat tbody tr").forEach((row) => {
    row.hidden = Boolean(mark) && row.dataset.mark !== mark;
  });
  one("left-all").hidden = !mark;
}

/* the steps of the main way to stand at, by number and title */
function offerSteps() {
  all(".step")
    .filter((step) => !step.closest(".remedy"))
    .forEach((step) => {
      const title = Array.from(step.querySelector("h3").childNodes).slice(2);
      const words = title.map((node) => node.textContent).join("");
      one("left-at").append(new Option(step.querySelector(".no").textContent + " " + words, step.id));
    });
}

if (guide && one("left-at")) {
  offerSteps();
  one("left-at").addEventListener("change", showWay);
  one("left-all").addEventListener("click", () => pick(""));
  all("table.mat tbody .ref").forEach((ref) => {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "ref";
    button.textContent = ref.textContent;
    button.setAttribute("aria-label", ref.textContent + ": " + say("left.only"));
    button.addEventListener("click", () => pick(ref.textContent));
    ref.replaceWith(button);
  });
  addEventListener("hashchange", () => {
    if (anchor() !== "left") return;
    one("left-at").value = lastTicked();
    showWay();
  });
}
