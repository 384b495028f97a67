/* Answers choose what is shown. A condition reads "revision=a,c&supplied=bare|...": any of these. Without an
   answer it may hold, so its part is shown with the condition in words. */
const answers = () => {
  const chosen = {};
  all(".ask input:checked").forEach((input) => {
    if (input.value) chosen[input.name] = input.value;
  });
  return chosen;
};

const YES = 2;
const MAYBE = 1;
const NO = 0;

function leaf(said, chosen) {
  const [option, values] = said.split("=");
  if (!(option in chosen)) return MAYBE;
  return values.split(",").includes(chosen[option]) ? YES : NO;
}

function holds(said, chosen) {
  const boxes = said
    .split("|")
    .map((box) => Math.min(...box.split("&").map((each) => leaf(each, chosen))));
  return Math.max(...boxes);
}

function choose() {
  const chosen = answers();
  const open = new Set();
  all("[data-when]").forEach((el) => {
    const how = holds(el.dataset.when, chosen);
    el.hidden = how === NO;
    el.classList.toggle("sure", how === YES);
    if (how === MAYBE) {
      el.dataset.when.split(/[|&]/).forEach((each) => open.add(each.split("=")[0]));
    }
  });
  // what is known for sure takes the place of "1/3"
  all("[data-sure]").forEach((el) => {
    el.hidden = holds(el.dataset.sure, chosen) !== YES;
  });
  all("[data-either]").forEach((el) => {
    let next = el.nextElementSibling;
    let known = false;
    for (; next && "sure" in next.dataset; next = next.nextElementSibling) known = known || !next.hidden;
    el.hidden = known;
  });
  // a question that no longer changes anything for this reader steps back
  all(".ask").forEach((field) => {
    field.classList.toggle("idle", !(field.dataset.option in chosen) && !open.has(field.dataset.option));
  });
}

function setAnswers(chosen) {
  all(".ask input").forEach((input) => {
    input.checked = input.value === (chosen[input.name] || "");
  });
  choose();
}
