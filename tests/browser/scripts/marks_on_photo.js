// Where the tips of leaders lie on the first photograph, in per cent of it; how wide it is; whether all of it is on the screen.
async ({enlarge}) => {
  const photo = document.querySelector(".photo");
  const zoom = photo.querySelector(".zoom");
  if (zoom.checked !== enlarge) zoom.click();
  await new Promise(requestAnimationFrame);
  const picture = photo.querySelector("img").getBoundingClientRect();
  const places = [...photo.querySelectorAll("circle.tip")].map((tip) => {
    const box = tip.getBoundingClientRect();
    return [
      ((box.left + box.width / 2 - picture.left) / picture.width) * 100,
      ((box.top + box.height / 2 - picture.top) / picture.height) * 100,
    ];
  });
  const plate = photo.querySelector(".plate").getBoundingClientRect();
  const fits = plate.left >= 0 && plate.top >= -1 && plate.right <= innerWidth + 1 && plate.bottom <= innerHeight + 1;
  return {places, width: picture.width, fits};
}
