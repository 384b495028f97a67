"""The scale of a measured value: a solid bar where it is allowed, hatched where it is not."""

from collections.abc import Iterator

from guidebuild.draw.svg import Box, Write, drawing, figure, number, path, rect, text

_WIDE = 240.0


def gauge_svg(least: float | None, most: float | None, unit: str, write: Write = figure) -> str:
    """At least one limit is told. The scale runs from below the lower to above the upper limit."""
    low, high = _ends(least, most)
    limits = {_place(value, low, high): value for value in (least, most) if value is not None}
    start = _place(least, low, high) if least is not None else 0.0
    end = _place(most, low, high) if most is not None else _WIDE
    refused = [Box(0, 9, start, 10), Box(end, 9, _WIDE - end, 10)]
    return drawing(
        "gauge drawn",
        Box(-8, 0, 272, 44),
        *(rect("hatch", box) for box in refused if box.width > 0),
        path("thin", "M0,9H240V19H0Z"),
        path("go", f"M{number(start)},14H{number(end)}"),
        path("wide", "".join(f"M{number(x)},2V26" for x in limits)),
        *_figures(limits, low, high, unit, write),
    )


def _place(value: float, low: float, high: float) -> float:
    return _WIDE * (value - low) / (high - low)


def _figures(
    limits: dict[float, float], low: float, high: float, unit: str, write: Write
) -> Iterator[str]:
    """The limits first; an end of the scale only where it leaves them room."""
    for x, value in limits.items():
        last = x == max(limits) and x > 0.7 * _WIDE
        words = f"{_rounded(value, write)} {unit}" if last else _rounded(value, write)
        yield text("fig", (x, 41), words, 14)
    if min(limits) > 0.2 * _WIDE:
        yield text("fig", (0, 41), _rounded(low, write), 14)
    if max(limits) <= 0.7 * _WIDE:
        yield text("fig", (_WIDE + 24, 41), f"{_rounded(high, write)} {unit}", 14, "end")


def _ends(least: float | None, most: float | None) -> tuple[float, float]:
    """Ends of the scale; a single limit of something that can't be negative starts at 0."""
    if least is None:
        assert most is not None
        return (0.0, 4 * most) if most > 0 else (2 * most - 1, 1.0)
    if most is None:
        return (0.0, 1.6 * least) if least > 0 else (2 * least - 1, 1.0)
    room = (most - least) * 0.6 or abs(most) * 0.2 or 1.0
    low = least - room
    return (0.0 if least >= 0 > low else low), most + room


def _rounded(value: float, write: Write) -> str:
    """Four figures are enough beside a scale."""
    return write(float(f"{value:.4g}")).replace("-", "−")
