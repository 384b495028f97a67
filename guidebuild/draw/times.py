"""A wait drawn as a dimension: its time between two arrows, one tick a minute, and the bar that runs."""

from guidebuild.draw.svg import Box, drawing, path, rect, text

_WIDE = 500.0


def wait_svg(seconds: float, words: str, title: str) -> str:
    """`words` stand over the line (`5 min`); the script widens the `rect.run` as time passes."""
    step, unit = _tick(seconds)
    places = [_WIDE * i * step / seconds for i in range(1, int((seconds - 1e-6) // step) + 1)]
    ticks = "".join(f"M{x:.2f},40V54" for x in places) + "M0,47H500"
    every = -(-len(places) // 12) or 1
    figures = [
        text("fig", (x, 39), str(i * step // unit), 12)
        for i, x in enumerate(places, start=1)
        if i % every == 0 and x < _WIDE - 12
    ]
    return drawing(
        "wait-line drawn",
        Box(-2, 0, 504, 54),
        path("mid", "M0,14V54M500,14V54"),
        path("mid", "M0,26H500"),
        path("tip", "M0,26l14,-3.4v6.8ZM500,26l-14,-3.4v6.8Z"),
        path("thin", ticks),
        rect("run", Box(0, 43, 0, 8)),
        text("num", (_WIDE / 2, 19), words, 20),
        *figures,
        title=title,
    )


def _tick(seconds: float) -> tuple[int, int]:
    """Length of a tick in seconds, and the unit that its figure counts: 10 s, a minute, an hour."""
    if seconds < 120:
        return 10, 1
    if seconds <= 3600:
        return 60, 60
    return (3600, 3600) if seconds <= 86400 else (86400, 86400)
