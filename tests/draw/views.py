"""Random views: places on an outline, each with a label."""

from random import Random

from guidebuild.draw.leaders import Target
from guidebuild.draw.svg import Box, Point

VIEWS = 200
LABELS = ("1", "2", "3", "12", "A", "B", "P3", "P10")


def spread(rng: Random, wide: float, high: float, count: int) -> list[Point]:
    """Places at least 9 units apart, as holes and plugs are."""
    found: list[Point] = []
    for _ in range(40 * count):
        place_ = rng.uniform(3, wide - 3), rng.uniform(3, high - 3)
        if len(found) < count and all(
            abs(x - place_[0]) + abs(y - place_[1]) > 9 for x, y in found
        ):
            found.append(place_)
    return found


def a_view(seed: int) -> tuple[list[Target], Box, Box]:
    """Targets, the outline that they lie in, and the room that numbers may take."""
    rng = Random(seed)
    wide, high = rng.uniform(50, 132), rng.uniform(50, 190)
    places = spread(rng, wide, high, rng.randint(1, 12))
    targets = [Target(rng.choice(LABELS), at, rng.choice((0.0, 4.5))) for at in places]
    return targets, Box(0, 0, wide, high), Box(-32, -22, wide + 64, high + 36)
