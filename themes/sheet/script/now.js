/* Before the page is laid out, so that nothing moves afterwards: the letters are asked for, and what only works with
   a script is shown. */
document.fonts.load("1em 'Atkinson Hyperlegible'");
document.fonts.load("bold 1em 'Atkinson Hyperlegible'");
document.documentElement.classList.add("scripts");
