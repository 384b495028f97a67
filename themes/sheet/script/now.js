/* The letters are asked for before the page is laid out, so that nothing moves when they come. */
document.fonts.load("1em 'Atkinson Hyperlegible'");
document.fonts.load("bold 1em 'Atkinson Hyperlegible'");
