/* A wait counts down along its dimension line; the end is told by the clock, so a sleeping tab loses nothing. */
const clock = (seconds) => Math.floor(seconds / 60) + ":" + ("0" + (seconds % 60)).slice(-2);

all("[data-seconds]").forEach((button) => {
  const wait = button.closest(".wait");
  const left = wait.querySelector("output");
  const bar = wait.querySelector(".run");
  const total = +button.dataset.seconds;
  let end = 0;
  let timer = 0;
  function show(seconds) {
    left.textContent = seconds ? clock(seconds) : say("wait.done");
    if (bar) bar.setAttribute("width", String(500 * (1 - seconds / total)));
  }
  function stop(label) {
    clearInterval(timer);
    timer = 0;
    button.textContent = say(label);
  }
  function beat() {
    const seconds = Math.max(0, Math.round((end - Date.now()) / 1000));
    show(seconds);
    if (!seconds) stop("wait.again");
  }
  button.addEventListener("click", () => {
    if (timer) {
      stop("wait.start");
      show(total);
      return;
    }
    end = Date.now() + total * 1000;
    button.textContent = say("wait.stop");
    timer = setInterval(beat, 250);
    beat();
  });
});
