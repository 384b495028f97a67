/* photographs: Escape puts an enlarged one back */
document.addEventListener("keydown", (event) => {
  if (event.key === "Escape") all(".zoom:checked").forEach((zoom) => (zoom.checked = false));
});
