// The text spacing that a reader may ask for (WCAG 2.2, 1.4.12).
() => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    "* {line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important}" +
      "p {margin-block-end: 2em !important}",
  );
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}
