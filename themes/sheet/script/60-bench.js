/* Bench mode: one step fills the screen, cut into faces. The first face holds the cautions; each later one at most
   five acts with at most three screws. The same page, so that ticks and answers are the same. */
const MOST_ACTS = 5;
const MOST_SCREWS = 3;
const bench = { on: false, step: null, face: 0, faces: [] };

const shown = (el) => !el.hidden && !el.closest("[hidden]");
const benchSteps = () => all(".step").filter(shown);

/* the pieces that are never torn apart: lines, sentences, checks, waits, methods */
function pieces(step) {
  return all(".does > *", step)
    .flatMap((block) => (block.matches("ul.acts") ? Array.from(block.children) : [block]))
    .filter(shown);
}

const acts = (piece) => all(".act", piece).length || (piece.matches(".act") ? 1 : 0);
const screws = (piece) => all(".act .screw", piece).length;

/* how high a face may be: from where the acts begin to the foot */
function room(step) {
  scrollTo(0, 0);
  return innerHeight - foot().offsetHeight - step.querySelector(".does").getBoundingClientRect().top - 8;
}

/* pieces fill a face until one would be too much; a piece that is higher than the window has one for itself */
function cut(step) {
  const cautions = all(".body > .panels > .panel", step).some(shown);
  step.classList.add("now", "whole");
  step.classList.toggle("later", cautions);
  const most = room(step);
  const faces = [];
  let face = [];
  let high = 0;
  pieces(step).forEach((piece) => {
    const more = piece.offsetHeight;
    const counted = face.concat(piece);
    const sum = (count) => counted.reduce((total, each) => total + count(each), 0);
    const full = high + more > most || sum(acts) > MOST_ACTS || sum(screws) > MOST_SCREWS;
    if (face.length && full && !piece.matches(".fork, .methods")) {
      faces.push(face);
      face = [];
      high = 0;
    }
    face.push(piece);
    high += more;
  });
  if (face.length) faces.push(face);
  step.classList.remove("whole");
  return cautions || !faces.length ? [[]].concat(faces) : faces;
}

function foot() {
  return one("bench-foot");
}

function labelsOn(face) {
  return new Set(face.flatMap((piece) => all(".ref, h4 .ref-in", piece).map((ref) => ref.textContent)));
}

/* the tally in one line: pockets, and of plugs and parts only what stands on the drawings */
function tallyAt(step) {
  const cells = Array.from(step.querySelectorAll(".tally .cells > div")).map((cell) => {
    const short = cell.cloneNode(true);
    if (cell.matches(".screws-out")) short.querySelector("dt").textContent = say("bench.screws");
    all("dd > span", short).forEach((item) => {
      const marks = all(".ref-in, .soft:not(.cond-in)", item);
      if (marks.length) item.replaceChildren(...marks.flatMap((mark) => [mark, " "]));
    });
    return short;
  });
  one("bench-tally").replaceChildren(...cells);
}

function neighbour(way) {
  if (bench.faces[bench.face + way]) return [bench.step, bench.face + way];
  const remedy = bench.step.closest(".remedy");
  const steps = benchSteps();
  if (remedy && way > 0) {
    const inside = all(".step", remedy).filter(shown);
    const after = inside[inside.indexOf(bench.step) + 1];
    return [after || one(remedy.dataset.resume) || null, 0];
  }
  const main = steps.filter((step) => !step.closest(".remedy"));
  const next = main[main.indexOf(bench.step) + way];
  if (!next) return [null, 0];
  return [next, way > 0 ? 0 : Infinity];
}

const number = (step) => step.querySelector(".no").textContent;

function showFace() {
  const step = bench.step;
  if (!step.classList.contains("now")) stopFilms();
  all(".step.now").forEach((el) => el.classList.remove("now", "later"));
  all(".other-face", step).forEach((el) => el.classList.remove("other-face"));
  bench.faces = cut(step);
  bench.face = Math.max(0, Math.min(bench.face, bench.faces.length - 1));
  step.classList.toggle("later", bench.face > 0);
  step.classList.toggle("first", !bench.faces[bench.face].length);
  const face = bench.faces[bench.face];
  const here = new Set(face);
  pieces(step).forEach((piece) => piece.classList.toggle("other-face", !here.has(piece)));
  all(".does > ul.acts", step).forEach((list) => {
    list.classList.toggle("other-face", !Array.from(list.children).some((piece) => here.has(piece)));
  });
  const labels = labelsOn(face);
  all("[data-label]", step).forEach((leader) => {
    leader.classList.toggle("quiet", face.length > 0 && !labels.has(leader.dataset.label));
  });
  one("bench-of").textContent =
    bench.faces.length > 1 ? say("bench.of", { n: bench.face + 1, total: bench.faces.length }) : "";
  one("bench-no").textContent = number(step);
  one("bench-title").textContent = step.querySelector("h3").lastChild.textContent;
  tallyAt(step);
  ["back", "next"].forEach((name) => {
    const [to] = neighbour(name === "next" ? 1 : -1);
    const label =
      to === step || (!to && name === "back")
        ? say("bench." + name)
        : to
          ? say("bench." + name + "-step", { number: number(to) })
          : say("bench.next-end");
    one("bench-" + name).querySelector("span").firstChild.textContent = label;
  });
  one("bench-back").disabled = !neighbour(-1)[0];
  scrollTo(0, 0);
  writeAddress(step.id);
}

function move(way) {
  const [step, face] = neighbour(way);
  if (step) {
    bench.step = step;
    bench.face = face;
    showFace();
    one("bench-title").focus({ preventScroll: true });
  } else if (way > 0) {
    leaveBench("final");
  }
}

function enterBench(id, face) {
  const steps = benchSteps();
  if (!steps.length) return;
  bench.on = true;
  bench.step = steps.find((step) => step.id === id) || steps[0];
  bench.face = face || 0;
  document.documentElement.classList.add("bench");
  foot().hidden = one("bench-head").hidden = false;
  showFace();
  stayAwake();
}

function leaveBench(place) {
  bench.on = false;
  document.documentElement.classList.remove("bench");
  foot().hidden = one("bench-head").hidden = true;
  all(".other-face, .quiet").forEach((el) => el.classList.remove("other-face", "quiet"));
  const to = place || (bench.step && bench.step.id);
  writeAddress(to);
  goTo(to);
}

/* a screen that goes dark under gloves is a nuisance; where a browser refuses, it stays as it was */
async function stayAwake() {
  try {
    await navigator.wakeLock.request("screen");
  } catch (refused) {
    // nothing depends on it
  }
}

function key(event) {
  if (!bench.on || event.altKey || event.ctrlKey || event.metaKey) return;
  const writes = event.target.matches("input[type=text], input[type=search], textarea, select");
  if (writes || event.target.matches("video")) return; // a film has keys of its own
  const onBox = event.target.matches("input, button, a");
  const right = document.documentElement.dir === "rtl" ? "ArrowLeft" : "ArrowRight";
  const left = document.documentElement.dir === "rtl" ? "ArrowRight" : "ArrowLeft";
  const ways = { PageDown: 1, PageUp: -1, [right]: 1, [left]: -1 };
  if (!onBox) ways[" "] = event.shiftKey ? -1 : 1;
  if (event.key === "Escape") leaveBench();
  else if (event.key in ways) move(ways[event.key]);
  else return;
  event.preventDefault();
}

if (guide && one("bench-foot")) {
  one("bench-next").addEventListener("click", () => move(1));
  one("bench-back").addEventListener("click", () => move(-1));
  one("bench-leave").addEventListener("click", () => leaveBench());
  addEventListener("keydown", key);
  addEventListener("resize", () => bench.on && showFace());
  addEventListener("change", () => {
    if (bench.on) showFace();
  });
  all(".to-bench").forEach((button) => {
    button.addEventListener("click", () => {
      const step = button.closest(".step");
      enterBench(step ? step.id : stepInView(), 0);
    });
  });
}
