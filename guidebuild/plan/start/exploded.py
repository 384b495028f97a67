"""Plain outline views from the sizes on a sheet: the parts one above the other in the order of removal.

So an assembly drawing shows a stack: pulled apart along its axis. Each part is a rectangle as wide and as high as it
was measured; its screws stand in a row across it. A view takes few parts, so that they stay large on paper.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from guidebuild.plan.start.strip import Removal
from guidebuild.plan.start.stripped import Stripped

MOST = 6  # parts on one view, besides the base
_GAP, _EDGE = 6.0, 5.0  # mm
_CORNER = 0.15  # of the shorter side


@dataclass(frozen=True, slots=True)
class Place:
    """Where a part lies on its view, mm: left, top, width, height."""

    view: str
    x: float
    y: float
    width: float
    height: float

    def holes(self, count: int) -> list[tuple[float, float]]:
        """So many screws in a row across it."""
        step = self.width / (count + 1)
        return [(self.x + step * (n + 1), self.y + self.height / 2) for n in range(count)]

    def path(self) -> str:
        """A rectangle with its corners cut, as an SVG path."""
        cut = _CORNER * min(self.width, self.height)
        across, down = self.width - 2 * cut, self.height - 2 * cut
        c, a, d = _mm(cut), _mm(across), _mm(down)
        return f"M{_mm(self.x + cut)} {_mm(self.y)} h{a} l{c} {c} v{d} l-{c} {c} h-{a} l-{c} -{c} v-{d} z"


@dataclass(frozen=True, slots=True)
class View:
    """One drawing: its id, its name, its size in mm, and what is on it by the id of the part."""

    id: str
    name: str
    width: float
    height: float
    places: dict[str, Place]


def views(sheet: Stripped) -> list[View]:
    """None where the sheet has no sizes."""
    sized = [one for one in sheet.removals if one.size is not None]
    shares = [sized[at : at + MOST] for at in range(0, len(sized), MOST)]
    return [
        _view(sheet, share, f"apart-{n + 1}" if len(shares) > 1 else "apart", n, len(shares))
        for n, share in enumerate(shares)
    ]


def _view(sheet: Stripped, share: Sequence[Removal], id_: str, number: int, of: int) -> View:
    base = sheet.of_base
    shown = [*share, base] if base is not None and base.size is not None else list(share)
    width = max(one.size[0] for one in shown if one.size) + 2 * _EDGE
    places = dict(_stacked(sheet, shown, id_, width))
    last = max(place.y + place.height for place in places.values())
    called = "Taken apart" if of == 1 else f"Taken apart, part {number + 1} of {of}"
    return View(id_, called, width, last + _EDGE, places)


def _stacked(
    sheet: Stripped, shown: Sequence[Removal], view: str, width: float
) -> Iterator[tuple[str, Place]]:
    down = _EDGE
    for one in shown:
        if one.size is not None:
            across, high = one.size
            yield sheet.of(one.part), Place(view, (width - across) / 2, down, across, high)
            down += high + _GAP


def written(found: Sequence[View]) -> list[str]:
    """As the record has them."""
    lines = []
    for view in found:
        lines += [
            f"  {view.id}:",
            f"    name: {view.name}",
            f"    size: [{_mm(view.width)}, {_mm(view.height)}]",
            "    outline:",
        ]
        lines += [f"      {part}: {place.path()}" for part, place in view.places.items()]
    return lines


def point(place: tuple[float, float]) -> tuple[str, str]:
    """A place as the record has it."""
    return _mm(place[0]), _mm(place[1])


def _mm(length: float) -> str:
    return f"{length:.1f}".removesuffix(".0")
