// Words that the reader cannot see, but for what only a script needs and what says again what is shown.
() => {
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.data.trim() || element.closest("script, title, video, desc, defs, button, .button, [data-words], .scripted, [aria-hidden=true], [data-sure], .record-lines, output, form[role=search]")) continue;
    if (!element.checkVisibility({visibilityProperty: true, opacityProperty: true}))
      found.push(`<${element.tagName.toLowerCase()} class="${element.getAttribute("class") ?? ""}"> ${node.data.trim().slice(0, 40)}`);
  }
  return [...new Set(found)];
}
