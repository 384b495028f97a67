// Beside a page of the preview: what the check found, news of each save, and the places that are clicked.
"use strict";
(() => {
  const { token, page, version } = document.currentScript.dataset;
  const key = "preview:" + page;
  const bar = document.createElement("div");
  const status = document.createElement("span");
  const select = document.createElement("select");
  let views = [], pictures = {};
  bar.className = "preview-bar";
  select.setAttribute("aria-label", "What to place");
  bar.append(status, select);

  // The reader's place: the step at the top of the window and how far it is scrolled past.
  const remember = () => {
    const steps = [...document.querySelectorAll("section.step")];
    const step = steps.filter((one) => one.getBoundingClientRect().top <= 1).pop();
    const past = step ? -step.getBoundingClientRect().top : scrollY;
    sessionStorage.setItem(key, JSON.stringify({ step: step ? step.id : "", past, id: select.value }));
  };
  const place = JSON.parse(sessionStorage.getItem(key) || "null");
  const restore = (place) => {
    const step = place && place.step && document.getElementById(place.step);
    if (place) scrollTo(0, place.past + (step ? step.getBoundingClientRect().top + scrollY : 0));
  };

  const beside = (finding) => {
    const note = document.createElement("aside");
    const head = document.createElement("b");
    note.className = "preview-finding " + finding.loud;
    head.textContent = finding.rule + ", line " + finding.line;
    note.append(head, finding.message + (finding.told ? " (" + finding.told + ")" : "") + " " + finding.help);
    const step = finding.step && document.getElementById(finding.step);
    const at = step ? step.querySelector(".body") || step : document.querySelector("main");
    if (at) at.prepend(note);
  };

  const tell = async () => {
    const told = await (await fetch("/preview/told?page=" + encodeURIComponent(page))).json();
    ({ views, pictures } = told);
    told.findings.forEach(beside);
    status.textContent = told.findings.length ? told.findings.length + " findings" : "nothing found";
    select.append(new Option("Place: nothing", ""), ...told.places.map((id) => new Option("Place: " + id, id)));
    select.value = (place && place.id) || "";
    select.hidden = !told.places.length;
    document.body.classList.toggle("preview-place", Boolean(select.value));
    restore(place);
    document.documentElement.dataset.preview = told.version;
  };

  // The new words at once, where the reader is; then the whole page, so that its own scripts work on them.
  const renew = async () => {
    remember();
    const text = await (await fetch(location.pathname)).text();
    const fresh = new DOMParser().parseFromString(text, "text/html");
    document.body.replaceChildren(...fresh.body.childNodes, bar);
    restore(JSON.parse(sessionStorage.getItem(key)));
    setTimeout(() => { remember(); location.reload(); }, 1000);
  };

  const follow = async () => {
    for (;;) {
      try {
        const news = await (await fetch("/preview/wait?page=" + encodeURIComponent(page) + "&version=" + version)).json();
        if (news.version !== version) { await renew(); return; }
      } catch { status.textContent = "the preview has stopped"; return; }
    }
  };

  // The symbol of a layer that a use leads to, through runs of shapes that stand once in the page.
  const layer = (use, depth = 0) => {
    const href = use.getAttribute("href") || "";
    if (href.startsWith("#v-") || depth > 8) return href;
    const run = document.getElementById(href.slice(1));
    const found = run ? [...run.querySelectorAll("use")].map((one) => layer(one, depth + 1)) : [];
    return found.find((one) => one.startsWith("#v-")) || "";
  };

  // Where on a view (mm) or a picture (per cent) the mouse is.
  const spot = (event) => {
    const photo = event.target.closest(".photo");
    const view = event.target.closest("svg.view");
    if (view && !photo) {
      const drawn = view.querySelector(":scope > g");
      const uses = drawn ? [...drawn.querySelectorAll("use")].map((one) => layer(one)) : [];
      const href = uses.find((one) => one.startsWith("#v-"));
      if (!href) return null;
      const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(drawn.getScreenCTM().inverse());
      const shown = views.filter((id) => href.startsWith("#v-" + id + "-"));
      const name = shown.sort((one, other) => other.length - one.length)[0];
      return name && { on: "view", name, x: at.x, y: at.y };
    }
    const image = photo && photo.querySelector("img");
    if (!image) return null;
    const box = image.getBoundingClientRect();
    const x = (event.clientX - box.left) / box.width * 100, y = (event.clientY - box.top) / box.height * 100;
    const shown = decodeURIComponent(new URL(image.src).pathname).replace(/^\/|-\d+\.\w+$/g, "");
    return pictures[shown] && x >= 0 && x <= 100 && y >= 0 && y <= 100
      ? { on: "picture", name: pictures[shown], x, y } : null;
  };

  addEventListener("click", async (event) => {
    const at = select.value && !bar.contains(event.target) && spot(event);
    if (!at) return;
    event.preventDefault();
    const sent = await fetch("/preview/place", {
      method: "POST",
      headers: { "Content-Type": "application/json", "X-Preview-Token": token },
      body: JSON.stringify({ ...at, page, id: select.value }),
    });
    const answer = await sent.json();
    status.textContent = answer.error || "written to " + answer.written;
  }, true);
  select.addEventListener("change", () => document.body.classList.toggle("preview-place", Boolean(select.value)));

  document.body.append(bar);
  tell().then(follow);
})();
