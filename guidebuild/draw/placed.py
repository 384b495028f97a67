"""Where a locator's numbers stand: the frame that shows the step's work, and a leader for each reference."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from guidebuild.device.head_size import head_size
from guidebuild.draw.frame import WIDE, Frame, frame
from guidebuild.draw.holes import ring_radius
from guidebuild.draw.leaders import Leader, Target
from guidebuild.draw.look import WORKED, End, HoleLook, Reference, Scene
from guidebuild.draw.placing import place
from guidebuild.draw.svg import Box
from guidebuild.draw.target import face_point, main_box, middle_inside, touching
from guidebuild.draw.view import Drawn

_ABOVE, _BELOW = 22.0, 14.0  # room for numbers above and below the drawing


@dataclass(frozen=True, slots=True)
class Unplaced:
    """A reference for which there was no room, and where its thing is: column and row, 0, 1 or 2 of three."""

    reference: Reference
    column: int
    row: int


@dataclass(frozen=True, slots=True)
class Placed:
    """A locator worked out: where it is shown, and the leaders that found a place."""

    frame: Frame
    leaders: tuple[Leader, ...]
    unplaced: tuple[Unplaced, ...]


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
    unplaced = (_unplaced(scene.references[i], targets[i], outline) for i in sorted(missing))
    return Placed(where, tuple(found), tuple(unplaced))


def _unplaced(reference: Reference, target: Target, outline: Box) -> Unplaced:
    x, y = target.at
    column = _third((x - outline.x) / (outline.width or 1))
    return Unplaced(reference, column, _third((y - outline.y) / (outline.height or 1)))


def _third(share: float) -> int:
    return min(2, max(0, int(share * 3)))


def _touched(leader: Leader, target: Target, id: str, drawn: Drawn, where: Frame) -> Leader:
    """The leader led on to the thing itself, where its box is not the thing."""
    if target.edge is None:
        return leader
    tip = touching(drawn, id, where.back(leader.tip), where.back(target.at))
    return replace(leader, tip=where.at(tip))


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
        if end_of(drawn, reference) is End.ARROW:
            edge = where.box(main_box(drawn, reference.thing))
            yield Target(reference.label, edge.centre, edge=edge)
        else:
            spot = face_point(drawn, scene, reference.thing, where.region)
            yield Target(reference.label, where.at(spot))


def end_of(drawn: Drawn, reference: Reference) -> End:
    """How the leader of what is no hole ends.

    An arrow needs an edge in the way to the middle: a bent cable has none there, and gets a dot.
    """
    solid = reference.end is End.DOT or middle_inside(drawn, reference.thing)
    return reference.end if solid else End.DOT
