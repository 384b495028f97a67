/* The start page: a plain substring search over what stands in the list, the same in every script. */
const box = one("find");
if (box) {
  /* Accents, Arabic vowel signs and its stretched letters are not looked at; Japanese sound marks are letters. */
  const fold = (text) =>
    text
      .normalize("NFKD")
      .replace(/(?![\u3099\u309a])\p{M}|\u0640/gu, "")
      .normalize("NFC")
      .toLowerCase();
  const rows = all("[data-find]").map((row) => [row, fold(row.dataset.find + " " + row.textContent)]);
  box.addEventListener("input", () => {
    const wanted = fold(box.value).split(/\s+/).filter(Boolean);
    let hits = 0;
    rows.forEach(([row, text]) => {
      const hit = wanted.every((word) => text.includes(word));
      row.hidden = !hit;
      hits += hit;
    });
    one("found").textContent = wanted.length ? say("start.found", { count: hits }) : "";
  });
}
