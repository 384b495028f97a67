// How much of the page jumped since it began to load, by the browser's own measure.
async () => {
  await document.fonts.ready;
  let sum = 0;
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) sum += entry.value;
  }).observe({type: "layout-shift", buffered: true});
  await new Promise((done) => setTimeout(done, 300));
  return sum;
}
