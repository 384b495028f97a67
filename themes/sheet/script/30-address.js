/* The address holds place and answers: "#step-id?revision=a&bench=2". A reload or a copied link finds both;
   `bench` is the face of the step in bench mode, counted from 1. */
const anchor = () => decodeURIComponent(location.hash.slice(1).split("?")[0]);
const inAddress = () => Object.fromEntries(new URLSearchParams(location.hash.split("?")[1] || ""));

function writeAddress(place) {
  const asked = new URLSearchParams(answers());
  if (bench.on) asked.set("bench", bench.face + 1);
  const said = asked.toString();
  const hash = "#" + (place === undefined ? anchor() : place) + (said ? "?" + said : "");
  if (hash !== location.hash && hash + location.hash !== "#") history.replaceState(null, "", hash);
}

function goTo(place) {
  const target = place && one(place);
  if (target) target.scrollIntoView();
}

/* the step at the top of the window */
function stepInView() {
  const above = all(".step").filter((step) => !step.hidden && step.getBoundingClientRect().top < 120);
  return above.length ? above[above.length - 1].id : "";
}

/* a link to a step stays in bench mode and keeps the answers */
function follow() {
  const said = inAddress();
  if (location.hash.includes("?")) setAnswers(said);
  const target = one(anchor());
  const step = target && target.closest(".step");
  if (bench.on && step) enterBench(step.id, (said.bench || 1) - 1);
  else if (bench.on && target) leaveBench(anchor());
  else if (location.hash.includes("?")) goTo(anchor());
  writeAddress();
}

function startAddress() {
  const said = inAddress();
  setAnswers(said);
  if (said.bench) enterBench(anchor(), said.bench - 1);
  else if (location.hash.includes("?")) goTo(anchor());
  all(".ask input").forEach((input) =>
    input.addEventListener("change", () => {
      choose();
      writeAddress();
    }),
  );
  addEventListener("hashchange", follow);
  let waiting = 0;
  addEventListener("scroll", () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => bench.on || writeAddress(stepInView()), 400);
  });
  all("a.tongue").forEach((link) =>
    link.addEventListener("click", () => {
      link.href = link.href.split("#")[0] + location.hash;
    }),
  );
}
