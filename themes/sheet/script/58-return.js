/* The return sheet: what the record knows stands there already, and the address of a step is read back as its title. */
const sheetOf = one("return");
const copies = sheetOf ? all("[data-from]", sheetOf) : [];

function copyRecord() {
  if (!sheetOf) return;
  copies.forEach((copy) => {
    const from = one(copy.dataset.from);
    const own = record.entries[copy.id];
    if (from && !(own && own[0])) copy.value = from.value;
  });
  nameStep();
}

/* a code that was misheard belongs to no step: nothing is said, and the reader looks again */
function nameStep() {
  const code = one("return.code").value.trim().toUpperCase();
  const step = all(".step").find((each) => each.dataset.code === code);
  one("return-step").textContent = step ? step.querySelector("h3").lastChild.textContent : "";
}

if (sheetOf) {
  addEventListener("input", copyRecord);
  addEventListener("beforeprint", copyRecord);
  all('a[href="#return"]').forEach((link) =>
    link.addEventListener("click", () => {
      const step = bench.on ? bench.step : one(stepInView());
      const code = one("return.code");
      if (step && !code.value) {
        code.value = step.dataset.code;
        put(code);
      }
      copyRecord();
    }),
  );
  one("return-print").addEventListener("click", () => {
    document.documentElement.classList.add("print-return");
    print();
    document.documentElement.classList.remove("print-return");
  });
}
