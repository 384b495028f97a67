"""A leader as a value: a number on its landing, and the oblique line from there to what it refers to.

Rules of ISO 6433 and ISO 128-2: oblique leaders in steps of 15 degrees, as short as may be, crossing no other;
references in rows outside the outline. All lengths are units of the sheet.
"""

from dataclasses import dataclass
from math import atan2, cos, hypot, radians, sin, tan

from guidebuild.draw.crossing import clear_of, crosses
from guidebuild.draw.svg import Box, Point

LETTER = 5.6  # width of a numeral 10 units high
AIR = 4.0  # by which a landing is longer than its number
HIGH = 9.6  # from the landing up to the top of the number's cell
DISTANCE = 11.0  # from the outline to the landing's inner end


@dataclass(frozen=True, slots=True)
class Target:
    """What a label refers to. A leader ends at `radius` from `at`, or where it meets `edge`, else at `at`."""

    label: str
    at: Point
    radius: float = 0.0
    edge: Box | None = None


@dataclass(frozen=True, slots=True)
class Leader:
    """The landing runs from `outer` to `bend`, the oblique part from there to `tip`. `side`: -1 left, 1 right.

    `cell` is the room of the number on its landing.
    """

    label: str
    side: int
    outer: Point
    bend: Point
    tip: Point
    target: int
    cell: Box

    @property
    def middle(self) -> float:
        """Where the number is centred."""
        return self.outer[0] - self.side * landing_length(self.label) / 2

    @property
    def angle(self) -> float:
        """Direction of the oblique part, in radians, y down."""
        return atan2(self.tip[1] - self.bend[1], self.tip[0] - self.bend[0])

    @property
    def length(self) -> float:
        """Of the oblique part."""
        return hypot(self.tip[0] - self.bend[0], self.tip[1] - self.bend[1])


def landing_length(label: str) -> float:
    """As long as the number on it, and some air."""
    return LETTER * len(label) + AIR


def leader(index: int, target: Target, side: int, outline: Box, angle: int, shift: float) -> Leader:
    """The leader at one angle (degrees, positive: the number lies lower than its target).

    Numbers of a side stand in one column; `shift` moves the bend towards the outline, and outwards, with the
    number, where it is negative.
    """
    edge = outline.x if side < 0 else outline.right
    x = edge + side * (DISTANCE - shift)
    outer = edge + side * (DISTANCE - min(shift, 0.0) + landing_length(target.label))
    y = target.at[1] + abs(target.at[0] - x) * tan(radians(angle))
    towards = atan2(target.at[1] - y, target.at[0] - x)
    back = target.radius if target.edge is None else _to_edge(target.at, target.edge, towards)
    tip = (target.at[0] - back * cos(towards), target.at[1] - back * sin(towards))
    cell = Box(min(outer, x), y - HIGH, abs(outer - x), HIGH + 1)
    return Leader(target.label, side, (outer, y), (x, y), tip, index, cell)


def _to_edge(at: Point, edge: Box, towards: float) -> float:
    """How far back along the leader the edge of the box lies."""
    c, s = cos(towards), sin(towards)
    across = (at[0] - (edge.x if c > 0 else edge.right)) / c
    down = (at[1] - (edge.y if s > 0 else edge.bottom)) / s if s else across
    return min(across, down)


def fits(one: Leader, other: Leader) -> bool:
    """Whether two leaders may stand in one drawing: numbers apart, no line through the other's."""
    if crosses((one.bend, one.tip), (other.bend, other.tip)):
        return False
    if one.side != other.side:
        return True
    if one.cell.touches(other.cell):
        return False
    return _clear(one, other.cell) and _clear(other, one.cell)


def _clear(leader: Leader, cell: Box) -> bool:
    """Whether the oblique part stays off another number and its landing."""
    (x0, y0), (x1, y1) = leader.bend, leader.tip
    if max(x0, x1) < cell.x or min(x0, x1) > cell.right:
        return True
    if max(y0, y1) < cell.y or min(y0, y1) > cell.bottom:
        return True
    left, top, right, bottom = cell.x, cell.y, cell.right, cell.bottom
    diagonals = (((left, top), (right, bottom)), ((left, bottom), (right, top)))
    return not any(crosses((leader.bend, leader.tip), one) for one in diagonals)


def runs_over(leader: Leader, targets: tuple[Target, ...]) -> bool:
    """Whether the oblique part passes over another target."""
    return any(
        not clear_of((leader.bend, leader.tip), other.at, other.radius + 0.5)
        for i, other in enumerate(targets)
        if i != leader.target
    )
