/* films: a time in the list goes there, the line that is being said is marked, the bar runs along the length */
function runFilm(figure) {
  const film = figure.querySelector("video");
  const lines = all(".moments:not(.others) li", figure);
  const bar = figure.querySelector(".run");
  const [start, end] = film.firstElementChild.src.split("#t=")[1].split(",").map(Number);
  const begins = (line) => +line.firstElementChild.dataset.at;
  all("a.at", figure).forEach((link) => {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "at";
    button.dataset.at = link.dataset.at;
    button.append(...link.childNodes);
    button.addEventListener("click", () => {
      film.currentTime = +button.dataset.at;
      film.play().catch(() => {}); // a browser that refuses still stands at the place
    });
    link.replaceWith(button);
  });
  film.addEventListener("timeupdate", () => {
    const at = film.currentTime;
    const said = lines.filter((line) => begins(line) <= at + 0.05).pop();
    lines.forEach((line) => line.classList.toggle("now", line === said && at < end && film.played.length > 0));
    const done = Math.max(0, Math.min(1, (at - start) / (end - start)));
    if (bar) bar.setAttribute("width", String(500 * done));
  });
}

/* in bench mode nothing runs on out of sight */
function stopFilms() {
  all(".film video").forEach((film) => film.pause());
}
all(".film").forEach(runFilm);
