// Quantities whose signs do not stand from left to right, or that fall apart over two lines.
() => {
  const found = [];
  for (const element of document.querySelectorAll("bdi.q")) {
    const node = element.firstChild;
    if (!node || !element.checkVisibility() || /\p{Script=Arabic}/u.test(node.data)) continue;
    const places = [...node.data].flatMap((letter, at) => {
      const range = document.createRange();
      range.setStart(node, at);
      range.setEnd(node, at + letter.length);
      return letter.trim() ? [range.getBoundingClientRect()] : [];
    });
    const apart = places.some((place, at) => at && (place.left < places[at - 1].left || place.top !== places[at - 1].top));
    if (apart) found.push(node.data);
  }
  return found;
}
