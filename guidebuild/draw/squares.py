"""The squares of the plan: how many of all screws are out after a step."""

from collections.abc import Iterable

from guidebuild.draw.svg import Box, drawing, path

_ROW = 18  # in one row as far as that; more make rows of a quarter, so that the block stays wide


def squares_svg(out: int, total: int, title: str) -> str:
    """`out` of `total` screws as filled squares; one path a kind, since a plan has hundreds of squares."""
    row = max(_ROW, -(-total // 4))
    filled, free = _cells(range(out), row), _cells(range(out, total), row)
    parts = [path("t-out", filled)] if filled else []
    parts += [path("t-in", free)] if free else []
    box = Box(0, 0, 16 * min(row, max(total, 1)), 16 * max(1, -(-total // row)) - 2)
    return drawing("squares", box, *parts, title=title)


def _cells(numbers: Iterable[int], row: int) -> str:
    return "".join(f"M{16 * (i % row)}.5,{16 * (i // row) + 1}.5h11v11h-11z" for i in numbers)
