// Words that the reader can't see, but for those that only a script needs (`.scripted`, `[data-words]`, buttons).
() => {
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.data.trim() || element.closest("script, title, desc, defs, button, [data-words], .scripted, output, form[role=search]")) continue;
    if (!element.checkVisibility({visibilityProperty: true, opacityProperty: true}))
      found.push(`<${element.tagName.toLowerCase()} class="${element.getAttribute("class") ?? ""}"> ${node.data.trim().slice(0, 40)}`);
  }
  return [...new Set(found)];
}
