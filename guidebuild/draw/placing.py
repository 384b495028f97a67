"""Where the numbers go: a row left and a row right of the outline, no leader crossing another.

Targets are split by a vertical line: those left of it get their numbers on the left. So leaders of the two
sides can't meet, and each side is a small search of its own: for each target a list of leaders, the best
first, and a walk that takes back what does not fit. Parallel leaders come first: they are the calmest.
"""

from collections.abc import Iterator, Sequence

from guidebuild.draw.leaders import Leader, Target, fits, leader, runs_over
from guidebuild.draw.svg import Box

_ANGLES = (15, -15, 30, -30)
_CROWDED = (45, -45, 60, -60)
_SHIFTS = (0.0, 3.0, 6.0, -4.0, -8.0)
_ANYWHERE = tuple(range(-12, 9))
_TRIES = 150  # leaders tried for one side of one split
_OVER = 60.0  # what a leader over another target costs, in units of length


def place(targets: Sequence[Target], outline: Box, room: Box) -> list[Leader]:
    """A leader for each target that finds a place, in the targets' order.

    `outline` is what numbers stay outside of, `room` where they may be. Where it is too crowded for all, as
    many as were found; the caller says the rest in words.
    """
    every = tuple(targets)
    table = _Table(every, outline, room)
    best: list[Leader] = []
    for angles in (_ANGLES, _ANGLES + _CROWDED):
        for left, right in _splits(every, outline):
            found = [*_side(table, left, -1, angles), *_side(table, right, 1, angles)]
            if len(found) > len(best):
                best = found
            if len(best) == len(every):
                return sorted(best, key=lambda one: one.target)
    return sorted(_squeezed(every, best, outline, room), key=lambda one: one.target)


def _squeezed(
    targets: tuple[Target, ...], found: list[Leader], outline: Box, room: Box
) -> list[Leader]:
    """What is left over goes wherever it still fits: either side, any angle, the bend anywhere."""
    left = set(range(len(targets))) - {one.target for one in found}
    for index in sorted(left):
        tries = (
            leader(index, targets[index], side, outline, angle, shift)
            for angle in _ANGLES + _CROWDED
            for shift in _ANYWHERE
            for side in (-1, 1)
        )
        fitting = (
            one for one in tries if room.holds(one.cell) and all(fits(one, o) for o in found)
        )
        best = min(fitting, key=lambda one: one.length, default=None)
        found = [*found, best] if best else found
    return found


def _splits(targets: tuple[Target, ...], outline: Box) -> Iterator[tuple[list[int], list[int]]]:
    """Ways to share the targets between the sides: at the middle of the drawing first, then further off."""
    order = sorted(range(len(targets)), key=lambda i: targets[i].at[0])
    middle = outline.centre[0]
    nearer = sum(1 for one in targets if one.at[0] < middle)
    for cut in sorted(range(len(order) + 1), key=lambda cut: abs(cut - nearer)):
        yield order[:cut], order[cut:]


class _Table:
    """All leaders that targets could have, each worked out once: every split of the targets asks for them."""

    def __init__(self, targets: tuple[Target, ...], outline: Box, room: Box) -> None:
        self.targets, self.outline, self.room = targets, outline, room
        self._leaders: dict[tuple[int, int, int, float], Leader | None] = {}
        self._over: dict[tuple[int, int, int, float], bool] = {}
        self._choices: dict[tuple[int, int, int], list[Leader]] = {}

    def leader(self, index: int, side: int, angle: int, shift: float) -> Leader | None:
        """None where its number would not stand in the room."""
        key = (index, side, angle, shift)
        if key not in self._leaders:
            one = leader(index, self.targets[index], side, self.outline, angle, shift)
            self._leaders[key] = one if self.room.holds(one.cell) else None
        return self._leaders[key]

    def over(self, one: Leader, angle: int, shift: float) -> bool:
        """Whether a leader passes over another target."""
        key = (one.target, one.side, angle, shift)
        if key not in self._over:
            self._over[key] = runs_over(one, self.targets)
        return self._over[key]

    def choices(self, index: int, side: int, angles: tuple[int, ...]) -> list[Leader]:
        """Every leader that this target could have on this side, the best first."""
        key = (index, side, len(angles))
        if key not in self._choices:
            found = []
            for angle in angles:
                for shift in _SHIFTS:
                    one = self.leader(index, side, angle, shift)
                    if one is not None:
                        over = _OVER if self.over(one, angle, shift) else 0.0
                        found.append((one.length + abs(shift) + abs(angle) / 3 + over, one))
            found.sort(key=lambda pair: pair[0])
            self._choices[key] = [one for _, one in found]
        return self._choices[key]


def _side(table: _Table, mine: list[int], side: int, angles: tuple[int, ...]) -> list[Leader]:
    targets = table.targets
    mine = sorted(mine, key=lambda i: (targets[i].at[1], targets[i].at[0]))
    parallel = _parallel(table, mine, side)
    if parallel is not None:
        return parallel
    walk = _Walk([table.choices(i, side, angles) for i in mine])
    walk.go(0)
    return walk.best


def _parallel(table: _Table, mine: list[int], side: int) -> list[Leader] | None:
    """All leaders of a side at one angle: the shortest such set, None where they do not fit."""
    good = []
    for angle in _ANGLES:
        found = [table.leader(i, side, angle, 0) for i in mine]
        row = [one for one in found if one is not None and not table.over(one, angle, 0)]
        if len(row) == len(mine) and _all_fit(row):
            good.append(row)
    return min(good, key=lambda row: sum(one.length for one in row)) if good else None


def _all_fit(row: list[Leader]) -> bool:
    return all(fits(one, other) for i, one in enumerate(row) for other in row[:i])


class _Walk:
    """A walk over the targets that takes back; it gives up after a bounded number of tries."""

    def __init__(self, choices: list[list[Leader]]) -> None:
        self.choices = choices
        self.taken: list[Leader] = []
        self.best: list[Leader] = []
        self.left = _TRIES

    def go(self, level: int) -> bool:
        """Places the targets from `level` on; `best` keeps the largest set met."""
        if len(self.taken) > len(self.best):
            self.best = list(self.taken)
        if level == len(self.choices):
            return len(self.taken) == len(self.choices)
        for one in self.choices[level]:
            self.left -= 1
            if self.left < 0:
                return False
            if all(fits(one, other) for other in self.taken):
                self.taken.append(one)
                if self.go(level + 1):
                    return True
                self.taken.pop()
        return self.go(level + 1)
