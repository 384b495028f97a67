"""From mm on the device to units of the sheet: the whole view, or a cut-out where the step's things are small.

A locator is always as many units wide, whatever the device measures, so that its numbers keep one size.
"""

from dataclasses import dataclass

from guidebuild.draw.svg import Box, Point

WIDE = 196.0  # units of a locator, margins for the numbers included
_DRAWN = 132.0  # of these at most for the drawing
_HIGH = 190.0
_LEAST_HEAD = 5.0  # a screw head smaller than this many units asks for a cut-out
_WORTH = 1.5  # a cut-out must enlarge at least so much
_MOST = 6.0  # units a mm: not larger than about six times on paper


@dataclass(frozen=True, slots=True)
class Frame:
    """`region` in mm is shown at `scale` units a mm, its corner at `origin`; `cut`: it is not the whole view."""

    region: Box
    scale: float
    origin: Point
    cut: bool

    def at(self, point: Point) -> Point:
        """A place of the device on the sheet, to a hundredth of a unit: nobody sees more, and pages have many."""
        x = self.origin[0] + (point[0] - self.region.x) * self.scale
        return round(x, 2), round(self.origin[1] + (point[1] - self.region.y) * self.scale, 2)

    def back(self, point: Point) -> Point:
        """A place of the sheet on the device."""
        x = self.region.x + (point[0] - self.origin[0]) / self.scale
        return x, self.region.y + (point[1] - self.origin[1]) / self.scale

    def box(self, box: Box) -> Box:
        """A box of the device on the sheet, cut off at the frame."""
        left, top = self.at((max(box.x, self.region.x), max(box.y, self.region.y)))
        right, bottom = self.at(
            (min(box.right, self.region.right), min(box.bottom, self.region.bottom))
        )
        return Box(left, top, max(0.0, right - left), max(0.0, bottom - top))

    @property
    def outline(self) -> Box:
        """What numbers stay outside of."""
        return Box(*self.origin, self.region.width * self.scale, self.region.height * self.scale)


def frame(whole: Box, work: Box | None, head: float | None) -> Frame:
    """The frame for a view whose shapes fill `whole`.

    `work`: box round this step's things, `head`: diameter of the smallest of them, all in mm.
    """
    full = _fitted(whole, cut=False)
    small = head is not None and head * full.scale < _LEAST_HEAD
    if work is None or not small:
        return full
    region = _inside(_region(work, whole), whole)
    part = _fitted(region, cut=True)
    return part if part.scale >= _WORTH * full.scale else full


def _fitted(region: Box, cut: bool) -> Frame:
    scale = min(_DRAWN / region.width, _HIGH / region.height, _MOST)
    return Frame(region, scale, ((WIDE - region.width * scale) / 2, 0.0), cut)


def _region(work: Box, whole: Box) -> Box:
    """The work with its surroundings: a third of its size all round, and never a narrow strip."""
    margin = max(0.3 * max(work.width, work.height), 0.04 * max(whole.width, whole.height))
    box = work.grown(margin)
    short = 0.55 * max(box.width, box.height)
    wide, high = max(box.width, short), max(box.height, short)
    x, y = box.centre
    return Box(x - wide / 2, y - high / 2, wide, high)


def _inside(region: Box, whole: Box) -> Box:
    """Moved and cut so that it does not reach past the drawing by more than a little air."""
    air = whole.grown(0.03 * max(whole.width, whole.height))
    wide, high = min(region.width, air.width), min(region.height, air.height)
    x = min(max(region.x, air.x), air.right - wide)
    y = min(max(region.y, air.y), air.bottom - high)
    return Box(x, y, wide, high)
