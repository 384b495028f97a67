"""Path data as short as they can be written: relative steps, quarters of circles as arcs.

A page shows thousands of corners, and an author's rounded rectangle comes as curves. Steps are counted in
hundredths of a mm from where the pen really is, so that roundings do not add up.
"""

from math import hypot

from fontTools.pens.basePen import BasePen  # type: ignore[import-untyped]

from guidebuild.draw.svg import number

_QUARTER = 0.5522847498  # handle of a cubic curve that is a quarter of a circle, in radii
_NEAR = 0.02

Place = tuple[int, int]
_Point = tuple[float, float]


class ShortPen(BasePen):  # type: ignore[misc]
    """Draws into text: see `data`. What leaves the finite raises OverflowError or ValueError."""

    def __init__(self) -> None:
        super().__init__(None)
        self._said: list[str] = []
        self._at: Place = (0, 0)
        self._start: Place = (0, 0)
        self._before: Place = (0, 0)  # the last quarter's step
        self._arc: tuple[int, int, int] | None = (
            None  # the quarter just drawn, if it may become a half
        )

    @property
    def data(self) -> str:
        """What was drawn."""
        return "".join(self._said)

    def _moveTo(self, point: _Point) -> None:
        self._at = self._start = _place(point)
        self._say(f"M{_n(self._at[0])},{_n(self._at[1])}")

    def _lineTo(self, point: _Point) -> None:
        x, y = self._to(point)
        self._say(f"h{_n(x)}" if not y else f"v{_n(y)}" if not x else f"l{_n(x)},{_n(y)}")

    def _curveToOne(self, first: _Point, second: _Point, end: _Point) -> None:
        x0, y0 = self._at
        one, two = ((x - x0, y - y0) for x, y in map(_place, (first, second)))
        step = self._to(end)
        arc = _quarter(one, two, step)
        if arc is None:
            self._say("c" + " ".join(f"{_n(x)},{_n(y)}" for x, y in (one, two, step)))
        elif arc == self._arc:
            self._half(arc, step)
        else:
            self._say(_arc(arc, step))
            self._arc, self._before = arc, step

    def _half(self, arc: tuple[int, int, int], step: Place) -> None:
        """Two quarters of one circle are said as its half."""
        self._said.pop()
        self._say(_arc(arc, (self._before[0] + step[0], self._before[1] + step[1])))

    def _closePath(self) -> None:
        self._at = self._start
        self._say("z")

    def _endPath(self) -> None:
        self._arc = None

    def _to(self, point: _Point) -> Place:
        """The step to a point, and there."""
        x0, y0 = self._at
        x, y = self._at = _place(point)
        return x - x0, y - y0

    def _say(self, words: str) -> None:
        self._arc = None
        self._said.append(words)


def _place(point: _Point) -> Place:
    return round(point[0] * 100), round(point[1] * 100)


def _n(value: int) -> str:
    return number(value / 100)


def _quarter(first: Place, second: Place, step: Place) -> tuple[int, int, int] | None:
    """Radii and sweep of the quarter of an upright ellipse that a curve is; None for another curve."""
    x, y = step
    if not x or not y:
        return None
    out = (_QUARTER * x, 0.0), (float(x), (1 - _QUARTER) * y)  # leaves level, arrives upright
    up = (0.0, _QUARTER * y), ((1 - _QUARTER) * x, float(y))
    for handles, turn in ((out, x * y), (up, -x * y)):
        if all(
            _close(a, b, abs(x) + abs(y)) for a, b in zip(handles, (first, second), strict=True)
        ):
            return abs(x), abs(y), int(turn > 0)
    return None


def _close(wanted: _Point, found: Place, size: int) -> bool:
    return hypot(wanted[0] - found[0], wanted[1] - found[1]) <= 1.5 + _NEAR * size


def _arc(arc: tuple[int, int, int], step: Place) -> str:
    across, down, sweep = arc
    return f"a{_n(across)},{_n(down)} 0 0 {sweep} {_n(step[0])},{_n(step[1])}"
