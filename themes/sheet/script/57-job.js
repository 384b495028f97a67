/* The job record as a file: saved, loaded, printed, begun anew. */
const stepOf = (input) => input.closest(".step");
const labelOf = (input) => {
  const row = input.closest("label, tr, .check, dl > div");
  const said = row && (row.querySelector("b, h4, th, dt, span:last-child") || row);
  return said ? said.textContent.replace(/\s+/g, " ").trim() : input.id;
};

function lines() {
  return kept()
    .filter((input) => input.id in record.entries)
    .map((input) => ({
      step: stepOf(input) ? stepOf(input).dataset.code : "",
      what: labelOf(input),
      value: record.entries[input.id][0],
      at: new Date(record.entries[input.id][1]).toISOString(),
    }));
}

function saveJob() {
  const whole = {
    record: 1,
    guide: storeKey,
    title: document.title,
    language: document.documentElement.lang,
    saved: new Date().toISOString(),
    answers: answers(),
    since: record.since,
    entries: record.entries,
    lines: lines(),
  };
  const file = new Blob([JSON.stringify(whole, null, 1)], { type: "application/json" });
  const link = document.createElement("a");
  const serial = record.entries["record.serial"];
  const name = [storeKey, serial ? serial[0] : "", whole.saved.slice(0, 10)].filter(Boolean).join(" ");
  link.href = URL.createObjectURL(file);
  link.download = "job " + name.replace(/[^\w.-]+/g, "-") + ".json";
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

async function loadJob(file) {
  let job = null;
  try {
    if (file.size < 4e6) job = JSON.parse(await file.text());
  } catch (unreadable) {
    // told below
  }
  const [number, issue] = String((job && job.guide) || "").split("/");
  const [ours, ourIssue] = storeKey.split("/");
  if (!job || job.record !== 1 || number !== ours) return tellJob(say("record.wrong"));
  // a loaded entry counts as written now, or a record begun anew before would swallow it
  const now = Date.now();
  const entries = Object.entries(job.entries || {}).filter(([, entry]) => Array.isArray(entry));
  merge({ entries: Object.fromEntries(entries.map(([id, entry]) => [id, [entry[0], now]])) });
  setAnswers(job.answers || {});
  showRecord();
  await writeStores();
  writeAddress();
  return tellJob(issue === ourIssue ? say("record.loaded") : say("record.other-issue", { issue }));
}

function tellJob(said) {
  one("record-said").textContent = said;
}

function newJob() {
  if (!confirm(say("record.clear-sure"))) return;
  record.since = Date.now();
  record.entries = {};
  showRecord();
  writeStores();
}

/* on paper: what was measured and how far the work came, step by step */
function printJob() {
  const body = one("record-lines");
  body.replaceChildren(
    ...all(".step")
      .filter(shown)
      .map((step) => {
        const boxes = all("input[type=checkbox]:not(.zoom)", step).filter(shown);
        const values = all("input.value", step).filter((input) => shown(input) && input.value);
        const row = document.createElement("tr");
        [
          step.dataset.code,
          step.querySelector("h3").lastChild.textContent,
          boxes.filter((box) => box.checked).length + " / " + boxes.length,
          values.map((input) => labelOf(input) + ": " + input.value + input.nextSibling.textContent).join("; "),
        ].forEach((text) => {
          const cell = document.createElement("td");
          cell.textContent = text;
          row.append(cell);
        });
        return row;
      }),
  );
  document.documentElement.classList.add("print-record");
  print();
  document.documentElement.classList.remove("print-record");
}

if (guide && one("record-tools")) {
  one("record-save").addEventListener("click", saveJob);
  one("record-print").addEventListener("click", printJob);
  one("record-new").addEventListener("click", newJob);
  one("record-load").addEventListener("change", (event) => {
    if (event.target.files.length) loadJob(event.target.files[0]);
    event.target.value = "";
  });
}
