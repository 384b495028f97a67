"""Screws that are easily mixed up, side by side and enlarged, with the difference dimensioned."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from guidebuild.device.screw import Screw
from guidebuild.draw.dimension import from_outside, upright
from guidebuild.draw.screw import ScrewSize, screw_id, size_of, top_id
from guidebuild.draw.svg import Box, Write, drawing, element, figure, line, number, text, use

_SCALES = (4, 3, 2)  # the largest at which the strip is no higher than:
_HIGHEST = 96.0  # mm; a higher one parts a caution from its act on paper


@dataclass(frozen=True, slots=True)
class Lookalike:
    """A screw and the number that it has in the guide."""

    label: str
    screw: Screw


def alike_scale(screws: Sequence[Lookalike]) -> int:
    """At how many times their size the screws are drawn: 4 is 4:1."""
    sizes = [size_of(one.screw) for one in screws]
    return next((n for n in _SCALES if n * _height(sizes) <= _HIGHEST), 1)


def alike_svg(screws: Sequence[Lookalike], title: str, write: Write = figure) -> str:
    """Two or more screws, their lengths beginning on one line; each next one's difference is dimensioned.

    It refers to `screw_symbols` of these screws.
    """
    scale = alike_scale(screws)
    strip = _Strip(tuple(size_of(one.screw) for one in screws), 4 / scale, write)
    parts = [strip.screw(n, one) for n, one in enumerate(screws)]
    parts += [strip.length(n) for n in range(len(screws))]
    return drawing("view alike", strip.box, *parts, *strip.differences(), title=title, mm=scale)


def _height(sizes: Sequence[ScrewSize]) -> float:
    wide = max(float(one.head.diameter) for one in sizes)
    longest = max(one.length for one in sizes)
    return max(one.before for one in sizes) + wide + longest + 7.6


@dataclass(frozen=True, slots=True)
class _Strip:
    """Places in mm. `k` makes letters, arrows and gaps the same size on the page at every scale."""

    sizes: tuple[ScrewSize, ...]
    k: float
    write: Write

    @property
    def wide(self) -> float:
        """The widest head."""
        return max(float(one.head.diameter) for one in self.sizes)

    @property
    def pair(self) -> bool:
        """Two only: the second one's length then stands on its other side, to leave the middle free."""
        return len(self.sizes) == 2

    @property
    def pitch(self) -> float:
        """From one centre line to the next."""
        return self.wide + self.k * (5.4 if self.pair else 8.6)

    @property
    def head_y(self) -> float:
        """Where the heads from above have their middle."""
        return -max(one.before for one in self.sizes) - self.wide / 2 - 2.2

    @property
    def box(self) -> Box:
        """Round everything."""
        left, top = -self.wide / 2 - 4.6 * self.k, self.head_y - self.wide / 2 - 1.4
        right = self.pitch * (len(self.sizes) - 1) + self.wide / 2
        right += self.k * (4.2 if self.pair else 2)
        return Box(left, top, right - left, max(one.length for one in self.sizes) + 4 - top)

    def screw(self, n: int, one: Lookalike) -> str:
        """The head from above, and below it the shadow, standing on its tip."""
        size, x, y = self.sizes[n], self.pitch * n, self.head_y
        half = float(size.head.diameter) / 2
        axes = line("ctr", (x, y - half - 1), (x, size.length + 1))
        axes += line("ctr", (x - half - 0.8, y), (x + half + 0.8, y))
        top = use(top_id(one.screw), (x, y))
        stand = f"translate({number(x)} 0) rotate(90)"
        side = element("use", href=f"#{screw_id(one.screw)}", transform=stand)
        at = (x - half - 1.7 * self.k, y + 0.65 * self.k)
        return axes + top + side + text("num", at, one.label, 1.9 * self.k)

    def length(self, n: int) -> str:
        """The length, dimensioned beside the screw."""
        size, middle = self.sizes[n], self.pitch * n
        side = 1 if self.pair and n else -1
        x = middle + side * (self.wide / 2 + 2.4 * self.k)
        edge = middle + side * (float(size.head.diameter) / 2 + 0.4)
        foot = middle + side * (size.diameter / 2 + 0.4)
        past = x + 0.8 * side * self.k
        ends = line("thin", (edge, 0), (past, 0))
        ends += line("thin", (foot, size.length), (past, size.length))
        told = self.write(size.length)
        return ends + upright(x, 0, size.length, told, 1.1 * self.k, 1.4 * self.k)

    def differences(self) -> Iterator[str]:
        """What each screw is longer or shorter than the one before it, dimensioned between the two."""
        between = (self.pitch - 0.8) / 2 if self.pair else self.wide / 2 + 2.6 * self.k
        for n in range(len(self.sizes) - 1):
            first, second = self.sizes[n], self.sizes[n + 1]
            low, high = sorted((first.length, second.length))
            if low != high:
                yield self._difference(self.pitch * n, first, second, between)

    def _difference(
        self, middle: float, first: ScrewSize, second: ScrewSize, between: float
    ) -> str:
        low, high = sorted((first.length, second.length))
        x, past = middle + between, 0.9 * self.k
        from_first = middle + first.diameter / 2 + 0.4
        to_second = middle + self.pitch - second.diameter / 2 - 0.4
        ends = line("thin", (from_first, first.length), (x + past, first.length))
        ends += line("thin", (x - past, second.length), (to_second, second.length))
        told = self.write(round(high - low, 3))
        return ends + from_outside(x, low, high, told, 1.1 * self.k, 1.9 * self.k)
