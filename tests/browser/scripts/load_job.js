/* Loads one file as a job record; tells what fell over, and what the page says of it. */
async ({ text }) => {
  let fell = "";
  addEventListener("unhandledrejection", (event) => (fell = String(event.reason)));
  addEventListener("error", (event) => (fell = event.message));
  const carrier = new DataTransfer();
  carrier.items.add(new File([text], "job.json"));
  const input = document.getElementById("record-load");
  input.files = carrier.files;
  input.dispatchEvent(new Event("change"));
  const said = document.getElementById("record-said");
  for (let n = 0; n < 100 && !said.textContent && !fell; n++) await new Promise((done) => setTimeout(done, 10));
  return [fell, said.textContent];
}
