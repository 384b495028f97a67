// Text that is harder to read than `least` : 1, by the formula of WCAG 2.2 (relative luminance, contrast ratio).
({least}) => {
  const parse = (colour) => {
    if (colour === "none" || !colour.match(/^(rgb|color\(srgb)/)) throw new Error(`no colour of ours: ${colour}`);
    const [, space, figures] = colour.match(/^(rgba?|color\(srgb)[( ]*([^)]*)\)$/);
    const [r, g, b, a = 1] = figures.split(/[\s,/]+/).map(Number);
    return space.startsWith("rgb") ? [r / 255, g / 255, b / 255, a] : [r, g, b, a];
  };
  const over = ([r, g, b, a], [R, G, B]) =>
    [r * a + R * (1 - a), g * a + G * (1 - a), b * a + B * (1 - a), 1];
  const lightness = ([r, g, b]) => {
    const linear = (v) => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
    return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
  };
  const ground = (element) => {
    if (!element) return [1, 1, 1, 1];
    const own = parse(getComputedStyle(element).backgroundColor);
    return own[3] === 1 ? own : over(own, ground(element.parentElement));
  };
  const opacity = (element) =>
    element ? Number(getComputedStyle(element).opacity) * opacity(element.parentElement) : 1;
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (!node.data.trim() || !element.checkVisibility({visibilityProperty: true})) continue;
    if (["SCRIPT", "STYLE", "title", "desc", "OPTION"].includes(element.tagName)) continue;
    const style = getComputedStyle(element);
    const drawn = element instanceof SVGElement;
    const [r, g, b, a] = parse(drawn ? style.fill : style.color);
    const paper = ground(element);
    const ink = over([r, g, b, a * opacity(element)], paper);
    const [high, low] = [lightness(ink), lightness(paper)].sort((x, y) => y - x);
    const ratio = (high + 0.05) / (low + 0.05);
    if (ratio < least)
      found.push(`${ratio.toFixed(2)} <${element.tagName.toLowerCase()} class="${element.getAttribute("class") ?? ""}"> ${node.data.trim().slice(0, 40)}`);
  }
  return [...new Set(found)];
}
