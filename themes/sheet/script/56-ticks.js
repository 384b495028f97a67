/* Ticks and values between the page and the record. */
const kept = () => all("input[id]:not([type=file])").filter((input) => !input.closest(".ask, .size, .search"));
const isBox = (input) => input.type === "checkbox" && !input.matches(".zoom");

function put(input) {
  record.entries[input.id] = [isBox(input) ? input.checked : input.value, Date.now()];
}

function showRecord() {
  kept().forEach((input) => {
    const entry = record.entries[input.id];
    if (isBox(input)) input.checked = Boolean(entry && entry[0]);
    else input.value = entry ? String(entry[0]) : "";
    if (!isBox(input)) judge(input);
  });
  copyRecord();
}

/* on paper a field is as long as what stands in it */
addEventListener("beforeprint", () => {
  all("input[type=text]").forEach((input) => (input.parentElement.dataset.written = input.value));
});

let writing = 0;
if (guide) {
  addEventListener("input", (event) => {
    if (!kept().includes(event.target)) return;
    put(event.target);
    toLocal();
    clearTimeout(writing);
    writing = setTimeout(writeStores, 150);
  });
  addEventListener("pagehide", writeStores);
  readStores().then(showRecord);
}
