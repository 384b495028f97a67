// Makes an address of every step's title, its hazards and its first act, so that the print tells on which side each
// stands, in any script; returns the marks of each step that has a caution.
() => {
  const seen = (element) => element.checkVisibility({visibilityProperty: true});
  let count = 0;
  const mark = (element) => {
    const link = document.createElement("a");
    link.style.all = "unset";
    link.href = `https://mark.invalid/m${++count}`;
    link.append(...element.childNodes);
    element.append(link);
    return `m${count}`;
  };
  return [...document.querySelectorAll(".step")].filter(seen).flatMap((step) => {
    const hazards = [...step.querySelectorAll(":scope .body > .panels .hazard")].filter(seen);
    const act = [...step.querySelectorAll(".act .say > b, .act b")].find(seen);
    return hazards.length && act ? [[step.querySelector("h3"), ...hazards, act].map(mark)] : [];
  });
}
