"""The squares of the plan: how many of all screws are out after a step."""

from guidebuild.draw.svg import Box, drawing, rect


def squares_svg(out: int, total: int, title: str) -> str:
    """`out` of `total` screws as filled squares, in rows of twelve or more so that the block stays wide."""
    row = max(12, -(-total // 4))
    cells = [
        rect(
            "t-out" if i < out else "t-in", Box(16 * (i % row) + 0.5, 16 * (i // row) + 1.5, 11, 11)
        )
        for i in range(total)
    ]
    box = Box(0, 0, 16 * min(row, max(total, 1)), 16 * max(1, -(-total // row)) - 2)
    return drawing("squares", box, *cells, title=title)
