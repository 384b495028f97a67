"""The locator: the device's view at a step, with what is worked on in heavy line and numbers beside it."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from guidebuild.device.head_size import head_size
from guidebuild.draw.cutout import cut_edge, overview
from guidebuild.draw.frame import WIDE, Frame, frame
from guidebuild.draw.holes import hole_marks, ring_radius
from guidebuild.draw.layers import layers
from guidebuild.draw.leaders import Leader, Target
from guidebuild.draw.look import WORKED, End, HoleLook, Reference, Scene
from guidebuild.draw.marks import arrow_tip
from guidebuild.draw.placing import place
from guidebuild.draw.scale_bar import scale_bar
from guidebuild.draw.svg import Box, Point, bent, circle, drawing, element, number, text
from guidebuild.draw.target import face_point, main_box, middle_inside, touching
from guidebuild.draw.view import Drawn

_NUMBER = 10.0
_SIDE = 32.0  # room for the numbers left and right
_ABOVE, _BELOW = 22.0, 14.0  # room for them above and below the drawing


@dataclass(frozen=True, slots=True)
class Placed:
    """A locator worked out: where it is shown, and the leaders that found a place."""

    frame: Frame
    leaders: tuple[Leader, ...]
    unplaced: tuple[str, ...]  # labels without a leader


def placed(drawn: Drawn, scene: Scene) -> Placed:
    """Frame and leaders of a scene."""
    where = frame(drawn.box, _work_box(drawn, scene), _smallest(drawn, scene))
    targets = list(_targets(drawn, scene, where))
    ids = [reference.thing for reference in scene.references]
    outline = where.outline
    room = Box(0, -_ABOVE, WIDE, outline.height + _ABOVE + _BELOW)
    found = [
        _touched(leader, targets[leader.target], ids[leader.target], drawn, where)
        for leader in place(targets, outline, room)
    ]
    missing = set(range(len(targets))) - {leader.target for leader in found}
    return Placed(where, tuple(found), tuple(targets[i].label for i in sorted(missing)))


def _touched(leader: Leader, target: Target, id: str, drawn: Drawn, where: Frame) -> Leader:
    """The leader led on to the thing itself, where its box is not the thing."""
    if target.edge is None:
        return leader
    tip = touching(drawn, id, where.back(leader.tip), where.back(target.at))
    return replace(leader, tip=where.at(tip))


def locator_svg(drawn: Drawn, scene: Scene, title: str, description: str = "") -> str:
    """The drawing (`svg.view`); it refers to `view_symbols` of the same view, and to `screw_symbols`."""
    at = placed(drawn, scene)
    where, outline = at.frame, at.frame.outline
    device = element(
        "g",
        layers(drawn, scene, where),
        transform=f"translate({_pair(where.at((0, 0)))}) scale({number(where.scale)})",
    )
    parts = [device, hole_marks(scene, where)]
    if where.cut:
        parts = [_clipped(parts, outline), cut_edge(outline)]
    for leader in at.leaders:
        reference = scene.references[leader.target]
        marked = any(hole.key == reference.thing for hole in scene.holes)
        parts.append(_leader(leader, reference.end if marked else _end_of(drawn, reference)))
    top = min([leader.cell.y for leader in at.leaders] + [-3.0]) - 3
    foot = max([leader.cell.bottom for leader in at.leaders] + [outline.bottom])
    parts.append(scale_bar(outline.right, foot + 16, where.scale))
    high = foot + 22
    if where.cut:
        small = overview(drawn, where, (outline.x, outline.bottom + 8))
        parts.append(small.markup)
        high = max(high, small.bottom + 4)
    box = Box(0, top, WIDE, high - top)
    return drawing("view", box, *parts, title=title, description=description)


def _pair(point: Point) -> str:
    return f"{number(point[0])} {number(point[1])}"


def _clipped(parts: list[str], outline: Box) -> str:
    """An inner `svg` cuts off at its edge without needing an id."""
    box = (outline.x, outline.y, outline.width, outline.height)
    return element(
        "svg",
        *parts,
        x=outline.x,
        y=outline.y,
        width=outline.width,
        height=outline.height,
        viewBox=" ".join(map(number, box)),
    )


def _work_box(drawn: Drawn, scene: Scene) -> Box | None:
    """Round everything that this step works on, in mm."""
    boxes = [drawn.box_of(id) for id, look in scene.looks.items() if look in WORKED]
    boxes += [
        Box(hole.at[0], hole.at[1], 0, 0).grown(3)
        for hole in scene.holes
        if hole.look is HoleLook.NOW
    ]
    found = [box for box in boxes if box is not None]
    corners = [p for box in found for p in ((box.x, box.y), (box.right, box.bottom))]
    return Box.round_all(corners) if corners else None


def _smallest(drawn: Drawn, scene: Scene) -> float | None:
    """Diameter in mm of the smallest screw head of this step, or two thirds of the smallest thing's length."""
    sizes = [
        float(head_size(hole.screw).diameter)
        for hole in scene.holes
        if hole.look is HoleLook.NOW and hole.screw is not None
    ]
    for id, look in scene.looks.items():
        if look in WORKED:
            box = main_box(drawn, id)
            sizes.append(max(box.width, box.height) / 1.5)
    return min(sizes, default=None)


def _targets(drawn: Drawn, scene: Scene, where: Frame) -> Iterator[Target]:
    holes = {hole.key: hole for hole in scene.holes}
    for reference in scene.references:
        hole = holes.get(reference.thing)
        if hole is not None:
            yield Target(reference.label, where.at(hole.at), ring_radius(hole, where))
            continue
        if _end_of(drawn, reference) is End.ARROW:
            edge = where.box(main_box(drawn, reference.thing))
            yield Target(reference.label, edge.centre, edge=edge)
        else:
            spot = face_point(drawn, scene, reference.thing, where.region)
            yield Target(reference.label, where.at(spot))


def _end_of(drawn: Drawn, reference: Reference) -> End:
    """An arrow needs an edge in the way to the middle: a bent cable has none there, and gets a dot."""
    solid = reference.end is End.DOT or middle_inside(drawn, reference.thing)
    return reference.end if solid else End.DOT


def _leader(leader: Leader, end: End) -> str:
    landing = bent("ldr", leader.outer, leader.bend, leader.tip)
    dot = end is End.DOT
    mark = circle("tip", leader.tip, 1.05) if dot else arrow_tip(leader.tip, leader.angle)
    figure = text("num", (leader.middle, leader.outer[1] - 2.1), leader.label, _NUMBER)
    return element("g", landing, mark, figure, data_label=leader.label)
