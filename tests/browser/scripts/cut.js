// Words that leave the block they stand in: they run into a neighbour, or are cut.
() => {
  const block = (element) => {
    for (let one = element; one; one = one.parentElement) {
      const display = getComputedStyle(one).display;
      if (!display.startsWith("inline") && display !== "contents") return one;
    }
  };
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.data.trim() || !element.checkVisibility({visibilityProperty: true})) continue;
    if (element.closest("svg, .away, script")) continue;
    const home = block(element);
    const room = home.getBoundingClientRect();
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects())
      if (box.width && (box.right > room.right + 2 || box.left < room.left - 2)) {
        found.push(`<${home.tagName.toLowerCase()} class="${home.getAttribute("class") ?? ""}"> ${node.data.trim().slice(0, 40)}`);
        break;
      }
  }
  return [...new Set(found)];
}
