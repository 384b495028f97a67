"""The signs of the sheet: alert triangle, first-angle symbol, forked track, revision triangle and cloud.

Sources: the alert triangle is of ISO 7010 W001's form, the projection symbol of ISO 5456-2, both drawn by us.
"""

from guidebuild.draw.svg import Box, circle, drawing, element, path, text, use

_TRIANGLE = (
    "M12,.8a2,2 0 0 1 1.75,1L23.3,18.4a2,2 0 0 1 -1.75,3H2.45a2,2 0 0 1 -1.75,-3L10.25,1.8"
    "a2,2 0 0 1 1.75,-1Z"
)
_BANG = "M10.5,6.6h3l-.55,7.6h-1.9ZM12,15.6a1.75,1.75 0 1 1 -.01,0Z"


def alert_symbol() -> str:
    """What `alert_svg` refers to, once in a page. Its mark has the fill of the drawing, which a theme sets."""
    triangle = element("path", fill="currentColor", d=_TRIANGLE)
    return element("g", triangle, element("path", d=_BANG), id="alert")


def alert_svg() -> str:
    """The alert triangle of a signal word: the word beside it speaks, so it is an ornament."""
    return drawing("alert", Box(0, 0, 24, 22), use("alert"))


def first_angle_svg(title: str) -> str:
    """The symbol of first-angle projection for the title block."""
    cone = path("wide", "M2,-4L20,-7V7L2,4Z")
    axes = path("ctr", "M-1,0H23M27,0H45M36,-9V9")
    ends = circle("wide", (36, 0), 7) + circle("wide", (36, 0), 4)
    return drawing("first-angle", Box(-1, -9, 46, 18), cone, axes, ends, title=title)


def fork_svg(ways: int, joins: bool = False) -> str:
    """The track that forks into methods, or joins again; it stretches over the width of its block."""
    step = 104.2 / ways
    places = [2.7 + step * i for i in range(ways)]
    last = places[-1]
    if joins:
        data = "".join(f"M{x:.1f},0V5" for x in places) + f"M2.7,5H{last:.1f}M2.7,5V10"
    else:
        data = f"M2.7,0V10M2.7,5H{last:.1f}" + "".join(f"M{x:.1f},5V10" for x in places[1:])
    whole = drawing("fork", Box(0, 0, 100, 10), path("wide", data))
    return whole.replace("<svg ", '<svg preserveAspectRatio="none" ', 1)


def revision_svg(issue: str, title: str) -> str:
    """The revision triangle with the issue in it."""
    return drawing(
        "revtri",
        Box(0, 0, 24, 21),
        path("wide", "M12,1.5L22.6,19.6H1.4Z"),
        text("num", (12, 17.4), issue, 10.5),
        title=title,
    )


def cloud_svg() -> str:
    """The draughtsman's revision cloud along an edge; its pattern comes with `patterns_svg`."""
    strip = element("rect", width="16", height="100%", fill="url(#cloud)")
    return element("svg", strip, class_="cloud", width="16", height="100%", aria_hidden="true")
