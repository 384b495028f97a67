"""The squares of the plan: how many of all screws are out after a step.

A plan has hundreds of squares, so the empty row stands once in a page, and the filled ones are a thick dashed
line over it (`t-out`: 11 wide, dashes of 11 and gaps of 5 units).
"""

from guidebuild.draw.svg import Box, drawing, element, path, use

_ROW = 18  # in one row as far as that; more make rows of a quarter, so that the block stays wide
_LEAST = 14  # columns that are always wide, so that four screws do not make four giants
_STEP = 16


def squares_symbol(total: int) -> str:
    """The row of empty squares, once in each page with `squares_svg` of this total."""
    row = _row(total)
    cells = (f"M{_STEP * (i % row)}.5,{_STEP * (i // row) + 1}.5h11v11h-11z" for i in range(total))
    return element("path", id="squares", class_="t-in", d="".join(cells)) if total else ""


def squares_svg(out: int, total: int, title: str) -> str:
    """`out` of `total` screws as filled squares."""
    row = _row(total)
    lines = (
        f"M.5,{_STEP * n + 7}h{_STEP * min(row, out - n * row)}" for n in range(-(-out // row))
    )
    filled = [path("t-out", "".join(lines))] if out else []
    box = Box(0, 0, _STEP * min(row, max(total, _LEAST)), _STEP * max(1, -(-total // row)) - 2)
    return drawing("squares", box, use("squares"), *filled, title=title)


def _row(total: int) -> int:
    return max(_ROW, -(-total // 4))
