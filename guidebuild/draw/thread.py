"""The threaded shank in profile: teeth at true pitch, one edge half a pitch behind the other.

Source: ISO 68-1 and ISO 965: root diameter d3 = d - 1.226869 P. Crest and root are drawn P/8 wide. The point
of a tapping screw is a cone (ISO 1478 type C); its root is taken as 0.74 d (common practice, no source).
"""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.draw.svg import Point

_ROOT = 1.226869
_CREST = 1 / 8


@dataclass(frozen=True, slots=True)
class Shank:
    """A shank along x. `start` is where the head ends, `end` where the screw ends; mm."""

    diameter: float
    pitch: float
    start: float
    end: float
    tapping: bool = False

    @property
    def root(self) -> float:
        """Diameter at the bottom of the thread."""
        return 0.74 * self.diameter if self.tapping else self.diameter - _ROOT * self.pitch


def shank(of: Shank) -> list[Point]:
    """The outline from the head along the lower edge, round the tip and back along the upper edge."""
    lower = [(x, r) for x, r in _edge(of, 0)]
    upper = [(x, -r) for x, r in _edge(of, of.pitch / 2)]
    return lower + upper[::-1]


def _edge(of: Shank, phase: float) -> Iterator[tuple[float, float]]:
    """One edge as (x, radius), cut by the tip's chamfer or cone."""
    out, root = of.diameter / 2, of.root / 2
    tip = _tip(of)
    yield of.start, root
    x = of.start + phase + of.pitch * _CREST
    slope = of.pitch * (0.5 - _CREST)
    while x + 2 * slope + of.pitch * _CREST <= of.end - tip:
        yield x, root
        yield x + slope, out
        yield x + slope + of.pitch * _CREST, out
        yield x + 2 * slope + of.pitch * _CREST, root
        x += of.pitch
    if of.tapping:
        yield of.end - tip, root
        yield of.end, 0.0
    else:
        yield of.end - tip, out
        yield of.end, out - tip


def _tip(of: Shank) -> float:
    """Length of the tip: a 45 degree chamfer down to the root, or the cone of a tapping screw."""
    room = (of.end - of.start) / 2
    return min(of.root if of.tapping else (of.diameter - of.root) / 2, room)
