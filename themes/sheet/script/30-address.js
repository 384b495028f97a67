/* The address holds place and answers: "#step-id?revision=a". A reload or a copied link finds both. */
const anchor = () => decodeURIComponent(location.hash.slice(1).split("?")[0]);
const inAddress = () => Object.fromEntries(new URLSearchParams(location.hash.split("?")[1] || ""));

function writeAddress(place) {
  const asked = new URLSearchParams(answers()).toString();
  const hash = "#" + (place === undefined ? anchor() : place) + (asked ? "?" + asked : "");
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

if (guide) {
  setAnswers(inAddress());
  if (location.hash.includes("?")) goTo(anchor());
  all(".ask input").forEach((input) =>
    input.addEventListener("change", () => {
      choose();
      writeAddress();
    }),
  );
  addEventListener("hashchange", () => {
    if (location.hash.includes("?")) {
      setAnswers(inAddress());
      goTo(anchor());
    } else {
      writeAddress();
    }
  });
  let waiting = 0;
  addEventListener("scroll", () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => writeAddress(stepInView()), 400);
  });
}
