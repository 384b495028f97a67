/* Loads texts as job records, one after the other; tells how many the page answered, and what fell over. */
async ({ texts, ids }) => {
  const fell = [];
  const keep = (event) => fell.push(String(event.reason || event.message).slice(0, 300));
  addEventListener("unhandledrejection", keep);
  addEventListener("error", keep);
  const input = document.getElementById("record-load");
  const said = document.getElementById("record-said");
  let answered = 0;
  for (const text of texts) {
    const carrier = new DataTransfer();
    carrier.items.add(new File([text], "job.json"));
    said.textContent = "";
    input.files = carrier.files;
    input.dispatchEvent(new Event("change"));
    for (let n = 0; n < 2000 && !said.textContent; n++) await new Promise((done) => setTimeout(done, 1));
    answered += said.textContent !== "";
  }
  removeEventListener("unhandledrejection", keep);
  removeEventListener("error", keep);
  return { answered, fell, ids: [...document.querySelectorAll("input[id], textarea[id]")].map((one) => one.id) };
}
