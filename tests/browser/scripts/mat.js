// The rows of "one left over" that are shown: number, hole and step; of each step that is shown its numbers.
() => {
  const shown = (one) => one.checkVisibility({visibilityProperty: true});
  const said = (one) => one.textContent.replace(/\s+/g, " ").trim();
  const rows = [...document.querySelectorAll("table.mat tbody tr")].filter(shown).map((row) => ({
    mark: row.dataset.mark,
    place: said(row.querySelector("td:nth-child(4)")),
    steps: [...row.querySelectorAll("td:nth-child(5) a")].filter(shown).map((link) => link.hash.slice(1).split("?")[0]),
  }));
  const steps = Object.fromEntries(
    [...document.querySelectorAll("main .step")].filter(shown).map((step) => [
      step.id,
      [...step.querySelectorAll(".act .ref")].map(said),
    ]),
  );
  return {rows, steps};
}
