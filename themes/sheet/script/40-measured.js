/* A measured value is compared with its limits, in words. */
function judge(input) {
  const cells = input.closest(".cells");
  const out = cells && cells.querySelector(".verdict");
  const value = parseFloat(input.value.replace(",", ".").replace("\u2212", "-"));
  const bad =
    ("min" in input.dataset && value < +input.dataset.min) ||
    ("max" in input.dataset && value > +input.dataset.max);
  if (out) out.textContent = isNaN(value) ? "" : say(bad ? "check.outside" : "check.inside");
  if (cells) cells.classList.toggle("outside", bad);
}
all("input[data-min], input[data-max]").forEach((input) =>
  input.addEventListener("input", () => judge(input)),
);
