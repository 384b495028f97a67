/* What the reader ticked and wrote, kept under the guide's number and issue. A browser may lose one of its two stores
   on file:, so both are read and merged, and both are written. Each entry is [value, time]: the later one wins, so
   merging in any order gives the same. Nothing here is needed to go on. */
const record = { since: 0, entries: {} };
const storeKey = guide ? guide.dataset.guide : "";

function merge(other) {
  if (!other || typeof other !== "object" || typeof other.entries !== "object") return;
  // a record comes from anybody's stick: a time to come would win over every later tick
  const time = (said) => Math.min(Number.isFinite(said) ? said : 0, Date.now());
  record.since = Math.max(record.since, time(other.since));
  Object.entries(other.entries || {}).forEach(([id, entry]) => {
    if (!Array.isArray(entry) || !["string", "boolean"].includes(typeof entry[0]) || id === "__proto__") return;
    const known = record.entries[id];
    if (!known || known[1] < entry[1]) record.entries[id] = [entry[0], time(entry[1])];
  });
  Object.keys(record.entries).forEach((id) => {
    if (record.entries[id][1] < record.since) delete record.entries[id];
  });
}

function fromLocal() {
  try {
    return JSON.parse(localStorage.getItem("sheet " + storeKey));
  } catch (refused) {
    return null;
  }
}

function toLocal() {
  try {
    localStorage.setItem("sheet " + storeKey, JSON.stringify(record));
  } catch (refused) {
    // the other store may still keep it
  }
}

const database = new Promise((resolve) => {
  try {
    const asked = indexedDB.open("sheets", 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore("records");
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = asked.onblocked = () => resolve(null);
  } catch (refused) {
    resolve(null);
  }
});

async function inDatabase(mode, work) {
  const base = await database;
  if (!base) return null;
  return new Promise((resolve) => {
    const request = work(base.transaction("records", mode).objectStore("records"));
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => resolve(null);
  });
}

async function readStores() {
  merge(fromLocal());
  merge(await inDatabase("readonly", (store) => store.get(storeKey)));
}

async function writeStores() {
  merge(fromLocal());
  toLocal();
  const copy = JSON.parse(JSON.stringify(record));
  await inDatabase("readwrite", (store) => store.put(copy, storeKey));
}
