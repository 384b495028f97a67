// What sticks out of the screen sideways, or out of a box that cuts it.
() => {
  const wide = document.documentElement.clientWidth;
  const told = (element, why) =>
    `${why} <${element.tagName.toLowerCase()} id="${element.id}" class="${element.getAttribute("class") ?? ""}"> ${element.textContent.trim().slice(0, 40)}`;
  const found = [];
  if (document.documentElement.scrollWidth > wide || document.body.scrollWidth > wide)
    found.push(`the page is ${document.documentElement.scrollWidth} wide on a screen of ${wide}`);
  const scrolled = (element) => {
    for (let one = element; one; one = one.parentElement)
      if (["auto", "scroll"].includes(getComputedStyle(one).overflowX)) return true;
    return false;
  };
  for (const element of document.body.querySelectorAll("*")) {
    if (!element.checkVisibility({visibilityProperty: true})) continue;
    if (element.closest("svg svg, svg > *, .away, option, [hidden]")) continue;
    const box = element.getBoundingClientRect();
    if (box.width && (box.right > wide + 1 || box.left < -1)) found.push(told(element, "out of the screen:"));
    const style = getComputedStyle(element);
    const cuts = ["hidden", "clip"].includes(style.overflowX) || ["auto", "scroll"].includes(style.overflowX);
    if (cuts && element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 2)
      found.push(told(element, `${element.scrollWidth} wide in ${element.clientWidth}:`));
  }
  return [...new Set(found)];
}
