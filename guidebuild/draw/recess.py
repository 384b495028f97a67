"""The recess of a drive as seen from above, black on the head, centred on (0, 0), in mm.

To scale where a standard gives the size: hexalobular (ISO 10664: points A, inner B), hexagon (across flats),
slot (blade). A cross, a square, and the drives without a standard are symbols: their shape tells the
driver, their size does not (a quarter to a half of the head).
"""

import re
from collections.abc import Callable, Iterable
from math import cos, pi, sin

from guidebuild.device.head_size import hexalobular
from guidebuild.draw.svg import Point, circle, path, polygon

_SIZED = re.compile(r"([A-Za-z-]+?)\s*([\d.]+(?:x[\d.]+)?)?$")


def recess(drive: str | None, head: float) -> str:
    """The markup for a drive in its normal form (`TX8`, `hex 2.5`) in a head of this diameter."""
    found = _SIZED.fullmatch(drive or "")
    draw = _SHAPES.get(found[1]) if found else None
    return draw(found[2] or "", head) if found and draw else ""


def _turned(points: Iterable[Point], times: int, start: float = 0) -> list[Point]:
    """Copies of a few corners turned round the middle."""
    few = list(points)
    found = []
    for turn in range(times):
        c, s = cos(start + 2 * pi * turn / times), sin(start + 2 * pi * turn / times)
        found += [(x * c - y * s, x * s + y * c) for x, y in few]
    return found


def _cross(size: str, head: float) -> str:
    wing = [(0.091, -0.077), (0.257, -0.061), (0.27, 0.0), (0.257, 0.061), (0.091, 0.077)]
    return path("ink", polygon(_turned([(x * head, y * head) for x, y in wing], 4)))


def _cross_z(size: str, head: float) -> str:
    """The second form of cross recess has a thin ray between each two wings."""
    rays = "".join(
        f"M{x0:.2f},{y0:.2f}L{x1:.2f},{y1:.2f}"
        for (x0, y0), (x1, y1) in zip(
            _turned([(0.12 * head, 0)], 4, pi / 4),
            _turned([(0.24 * head, 0)], 4, pi / 4),
            strict=True,
        )
    )
    return _cross(size, head) + path("mid", rays)


def _cross_jis(size: str, head: float) -> str:
    """The Japanese cross is told by a dimple beside it."""
    return _cross(size, head) + circle("ink", (0.3 * head, 0.3 * head), 0.05 * head)


def lobes(points: float, inner: float) -> str:
    """Path data of six lobes: outer and inner arcs that meet smoothly near the mean circle."""
    outer_r, inner_r = points / 2, inner / 2
    step = pi / 48
    corners = []
    for i in range(96):
        wave = (1 + cos(6 * i * step)) / 2
        radius = inner_r + (outer_r - inner_r) * wave**0.85
        corners.append((radius * sin(i * step), -radius * cos(i * step)))
    return polygon(corners)


def _star(size: str, head: float) -> str:
    known = hexalobular(size)
    points, inner = map(float, known) if known else (0.5 * head, 0.36 * head)
    return path("ink", lobes(points, inner))


def _star_pin(size: str, head: float) -> str:
    known = hexalobular(size)
    return _star(size, head) + circle(
        "hole", (0, 0), 0.16 * float(known[0]) if known else 0.07 * head
    )


def _regular(corners: int, across_flats: float, start: float) -> str:
    radius = across_flats / 2 / cos(pi / corners)
    return polygon(_turned([(0, -radius)], corners, start))


def _hexagon(size: str, head: float) -> str:
    return path("ink", _regular(6, float(size or 0.45 * head), 0))


def _hexagon_pin(size: str, head: float) -> str:
    return _hexagon(size, head) + circle("hole", (0, 0), 0.17 * float(size or 0.45 * head))


def _slot(size: str, head: float) -> str:
    half = float(size.partition("x")[0] or 0.16 * head) / 2
    end = (head**2 / 4 - half**2) ** 0.5 if half < head / 2 else 0
    return path("ink", polygon([(-end, -half), (end, -half), (end, half), (-end, half)]))


def _square(size: str, head: float) -> str:
    return path("ink", _regular(4, 0.36 * head, pi / 4))


def _three_square(size: str, head: float) -> str:
    return path("ink", _regular(3, 0.22 * head, 0))


def _wings(size: str, head: float) -> str:
    """Three wings set off round a small triangle."""
    wing = [(-0.1 * head, -0.03 * head), (-0.1 * head, -0.3 * head), (0.0, -0.3 * head)]
    return path("ink", polygon(_turned([*wing, (0.02 * head, -0.1 * head)], 3)))


def _three_points(size: str, head: float) -> str:
    """Three wings that meet in the middle."""
    half = 0.055 * head
    return path(
        "ink",
        polygon(
            _turned(
                [
                    (-half, -0.06 * head),
                    (-half, -0.3 * head),
                    (half, -0.3 * head),
                    (half, -0.06 * head),
                ],
                3,
            )
        ),
    )


def _five_lobes(size: str, head: float) -> str:
    radius = float(size or 0) / 2 or 0.26 * head
    corners = []
    for i in range(100):
        angle = 2 * pi * i / 100
        at = radius * (0.78 + 0.22 * cos(5 * angle))
        corners.append((at * sin(angle), -at * cos(angle)))
    return path("ink", polygon(corners))


def _two_holes(size: str, head: float) -> str:
    return circle("ink", (-0.26 * head, 0), 0.08 * head) + circle(
        "ink", (0.26 * head, 0), 0.08 * head
    )


def _one_way(size: str, head: float) -> str:
    """A slot of which two quarters fall away, so that a blade only drives it home."""
    half = 0.07 * head
    cut = [(-0.42 * head, -half), (0.0, -half), (0.3 * head, -0.28 * head), (0.42 * head, -half)]
    return path("ink", polygon(_turned([*cut, (0.42 * head, 0.0), (-0.42 * head, 0.0)], 2)))


def _none(size: str, head: float) -> str:
    """A hexagon head turned from outside: its outline shows it."""
    return ""


_SHAPES: dict[str, Callable[[str, float], str]] = {
    "PH": _cross,
    "PZ": _cross_z,
    "JIS": _cross_jis,
    "TX": _star,
    "TR": _star_pin,
    "hex": _hexagon,
    "hex-pin": _hexagon_pin,
    "slot": _slot,
    "AF": _none,
    "square": _square,
    "tri-wing": _wings,
    "Y": _three_points,
    "five-lobe": _five_lobes,
    "two-hole": _two_holes,
    "one-way": _one_way,
    "triangle": _three_square,
}
