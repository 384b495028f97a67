"""Where numbers and leaders go: numbers in a row left and a row right, outside; no leader crosses another.

Rules of ISO 6433 and ISO 128-2: oblique leaders in steps of 15 degrees, as short as may be, references in
rows outside the outline. A number stands on a landing; one leader runs from the landing's inner end to its
target at 15 or 30 degrees (45 or 60 where it is crowded).

All lengths are units of the sheet. The search is exact for few targets: for each target a list of candidate
places, cheapest first, then a walk over the targets that takes back what does not fit.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import atan2, cos, hypot, radians, sin, tan

from guidebuild.draw.crossing import clear_of, crosses
from guidebuild.draw.svg import Box, Point

LETTER = 5.6  # width of a numeral 10 units high
AIR = 4.0  # by which a landing is longer than its number
HIGH = 10.0  # from the landing up to the top of the number's cell
DISTANCE = 11.0  # from the outline to the landing's inner end
_ANGLES = (15, -15, 30, -30)
_CROWDED = (45, -45, 60, -60)
_BENDS = (0.0, 3.0, 6.0, -4.0, -8.0)
_TRIES = 4000


@dataclass(frozen=True, slots=True)
class Target:
    """What a label refers to. `radius` keeps the arrow off a ring's middle; 0 ends right at `at`."""

    label: str
    at: Point
    radius: float = 0.0


@dataclass(frozen=True, slots=True)
class Leader:
    """`landing` runs from the outer end to the inner one, `leader` from there to the target's edge."""

    label: str
    side: int  # -1 left, 1 right
    outer: Point
    bend: Point
    tip: Point
    target: int

    @property
    def cell(self) -> Box:
        """The room of the number on its landing."""
        left = min(self.outer[0], self.bend[0])
        return Box(left, self.outer[1] - HIGH, abs(self.outer[0] - self.bend[0]), HIGH + 1)

    @property
    def middle(self) -> float:
        """Where the number is centred."""
        return self.outer[0] - self.side * landing_length(self.label) / 2

    @property
    def length(self) -> float:
        """Of the oblique part."""
        return hypot(self.tip[0] - self.bend[0], self.tip[1] - self.bend[1])


def landing_length(label: str) -> float:
    """As long as the number on it, and some air."""
    return LETTER * len(label) + AIR


def place(targets: Sequence[Target], outline: Box, room: Box) -> list[Leader]:
    """A leader for each target that fits; `outline` is what numbers stay outside of, `room` where they may be.

    Targets that find no place are left out; the caller says them in words.
    """
    found = _parallel(targets, outline, room)
    if found is None:
        choices = [_choices(i, one, outline, room, targets) for i, one in enumerate(targets)]
        order = sorted(range(len(targets)), key=lambda i: (targets[i].at[1], targets[i].at[0]))
        found = _search([choices[i] for i in order])
    return sorted(found, key=lambda leader: leader.target)


def _parallel(targets: Sequence[Target], outline: Box, room: Box) -> list[Leader] | None:
    """The usual case and the calmest picture: each on its nearer side, one angle a side; None if crowded."""
    middle = outline.centre[0]
    found: list[Leader] = []
    for side in (-1, 1):
        mine = [i for i, one in enumerate(targets) if (one.at[0] < middle) == (side < 0)]
        rows = ([_at_side(i, targets[i], side, outline, angle) for i in mine] for angle in _ANGLES)
        good = [row for row in rows if _all_fit(row, room) and not _hits(row, targets)]
        if not good:
            return None
        found += min(good, key=lambda row: sum(leader.length for leader in row))
    return found if _all_fit(found, room) else None


def _at_side(index: int, target: Target, side: int, outline: Box, angle: int) -> Leader:
    x = (outline.x if side < 0 else outline.right) + side * DISTANCE
    return _leader(index, target, side, x + side * landing_length(target.label), x, angle)


def _all_fit(row: Sequence[Leader], room: Box) -> bool:
    if not all(room.holds(leader.cell) for leader in row):
        return False
    return all(fits(one, other) for i, one in enumerate(row) for other in row[:i])


def _hits(row: Sequence[Leader], targets: Sequence[Target]) -> bool:
    """Whether a leader runs over another target."""
    return any(
        not clear_of((leader.bend, leader.tip), other.at, other.radius + 0.5)
        for leader in row
        for i, other in enumerate(targets)
        if i != leader.target
    )


@dataclass(frozen=True, slots=True)
class _Choice:
    cost: float
    leader: Leader


def _choices(
    index: int, target: Target, outline: Box, room: Box, targets: Sequence[Target]
) -> list[_Choice]:
    """Every place that this target's number could have, the best first."""
    found = []
    for leader, crowded in _candidates(index, target, outline):
        cell = leader.cell
        if not room.holds(cell):
            continue
        cost = leader.length + crowded + (60 if _hits([leader], targets) else 0)
        found.append(_Choice(cost, leader))
    return sorted(found, key=lambda choice: choice.cost)


def _candidates(index: int, target: Target, outline: Box) -> Iterator[tuple[Leader, float]]:
    """All combinations of side, angle and bend; the second value is what a rarer form costs."""
    for side in (-1, 1):
        edge = outline.x if side < 0 else outline.right
        column = edge + side * (DISTANCE + landing_length(target.label))
        for angle in _ANGLES + _CROWDED:
            for bend in _BENDS:
                x = edge + side * (DISTANCE - bend)
                outer = column if bend >= 0 else x + side * landing_length(target.label)
                leader = _leader(index, target, side, outer, x, angle)
                extra = abs(bend) + (25 if angle in _CROWDED else 0) + abs(angle) / 15
                yield leader, extra


def _leader(index: int, target: Target, side: int, outer: float, x: float, angle: int) -> Leader:
    across = abs(target.at[0] - x)
    y = target.at[1] + across * tan(radians(angle))
    towards = atan2(target.at[1] - y, target.at[0] - x)
    tip = (
        target.at[0] - target.radius * cos(towards),
        target.at[1] - target.radius * sin(towards),
    )
    return Leader(target.label, side, (outer, y), (x, y), tip, index)


def fits(one: Leader, other: Leader) -> bool:
    """Whether two leaders may stand in one drawing: numbers apart, no line through the other's."""
    if one.cell.touches(other.cell):
        return False
    if crosses((one.bend, one.tip), (other.bend, other.tip)):
        return False
    return _clear(one, other) and _clear(other, one)


def _clear(leader: Leader, other: Leader) -> bool:
    """Whether a leader stays off another one's number and landing."""
    cell = other.cell
    corners = [
        (cell.x, cell.y),
        (cell.right, cell.y),
        (cell.right, cell.bottom),
        (cell.x, cell.bottom),
    ]
    sides = zip(corners, [*corners[1:], corners[0]], strict=True)
    return not any(crosses((leader.bend, leader.tip), side) for side in sides)


def _search(choices: list[list[_Choice]]) -> list[Leader]:
    """The first complete set found; where there is none, the largest one met on the way."""
    best: list[Leader] = []
    for allowed in range(len(choices) + 1):
        walk = _Walk(choices)
        if walk.go(0, allowed):
            return walk.taken
        best = max(best, walk.best, key=len)
    return best


class _Walk:
    """A walk over the targets that takes back; it gives up after a bounded number of tries."""

    def __init__(self, choices: list[list[_Choice]]) -> None:
        self.choices = choices
        self.taken: list[Leader] = []
        self.best: list[Leader] = []
        self.left = _TRIES

    def go(self, level: int, allowed: int) -> bool:
        """Places the targets from `level` on, leaving out at most `allowed` of them."""
        if len(self.taken) > len(self.best):
            self.best = list(self.taken)
        if level == len(self.choices):
            return True
        for choice in self.choices[level]:
            self.left -= 1
            if self.left < 0:
                return False
            if all(fits(choice.leader, other) for other in self.taken):
                self.taken.append(choice.leader)
                if self.go(level + 1, allowed):
                    return True
                self.taken.pop()
        return allowed > 0 and self.go(level + 1, allowed - 1)
