// Of every step its title, the hazard of each of its cautions, and its first act.
() => {
  const seen = (element) => element.checkVisibility({visibilityProperty: true});
  return [...document.querySelectorAll(".step")].filter(seen).map((step) => {
    const body = step.querySelector(".body");
    const panels = [...body.querySelectorAll(":scope > .panels .hazard")].filter(seen);
    const act = [...step.querySelectorAll(".act .say > b, .act b")].find(seen);
    const title = step.querySelector("h3").cloneNode(true);
    title.querySelectorAll(".away, [aria-hidden]").forEach((one) => one.remove());
    const words = panels.length && act ? [...panels, act].map((one) => one.textContent.trim()) : [];
    return [title.textContent.trim(), ...words];
  });
}
