// The words of every block that a print shows.
() => {
  const found = [];
  const walker = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.data.trim() || element.closest("script, title, desc, button, select, .away, .rail, [hidden]")) continue;
    if (!element.checkVisibility({visibilityProperty: true})) continue;
    found.push(node.data.trim());
  }
  return [...new Set(found)];
}
