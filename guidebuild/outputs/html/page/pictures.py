"""The locator of a step: the view that shows most of its work, with this step's things marked."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from guidebuild.device.acts import REPLACING
from guidebuild.draw.locator import locator_svg
from guidebuild.draw.look import End, Look, Reference, Scene
from guidebuild.draw.scene import scene_at, view_for
from guidebuild.draw.view import Drawn
from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage
from guidebuild.translate.messages.text import Mark, Text, joined, plain, text


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawing with its caption; `view` is the view's id."""

    svg: str
    caption: Text
    view: str


def locator(
    reading: Reading,
    passage: Passage,
    lines: list[Line],
    drawn: Mapping[str, Drawn],
    last: str | None = None,
) -> Picture | None:
    """The drawing, of `last` where no view shows any of the step's work; None where there is none."""
    renewed = _renewed(reading, passage)
    id = view_for(reading.device, passage, drawn) or _showing(drawn, renewed) or last
    if id is None:
        return None
    view = reading.device.views[id]
    orders = {key: n for line in lines for key, n in line.orders}
    scene = scene_at(
        reading.device, view, drawn[id], passage, reading.labels.on_drawings, orders=orders
    )
    scene = _with_renewed(reading, scene, drawn[id], renewed)
    name = view.name.text if view.name else id.replace("-", " ")
    shown = {reference.thing for reference in scene.references}
    caption = _caption(reading, name, lines, shown)
    title = reading.say.plain("picture.title", view=name)
    svg = locator_svg(drawn[id], scene, title, plain(caption))
    return Picture(svg, caption, id)


def _renewed(reading: Reading, passage: Passage) -> list[str]:
    """Keys of joints that are renewed in the step: nothing of them is on the device, but their place is."""
    moves = [one.doing for one in passage.walked if isinstance(one.doing, Move)]
    joints = {joint.key for joint in reading.device.joints}
    return [move.thing for move in moves if move.verb in REPLACING and move.thing in joints]


def _showing(drawn: Mapping[str, Drawn], ids: list[str]) -> str | None:
    """The first view that draws one of these."""
    return next((id for id, one in drawn.items() if any(one.box_of(key) for key in ids)), None)


def _with_renewed(reading: Reading, scene: Scene, drawn: Drawn, renewed: list[str]) -> Scene:
    """The scene with the places of what is renewed marked as this step's work."""
    known = {reference.thing for reference in scene.references}
    there = [key for key in renewed if drawn.box_of(key) and key not in known]
    looks = {**scene.looks, **{key: Look.NOW for key in there}}
    more = tuple(Reference(reading.labels.of(key), key, End.ARROW) for key in there)
    return replace(scene, looks=looks, references=(*scene.references, *more))


def _caption(reading: Reading, name: str, lines: list[Line], shown: set[str]) -> Text:
    """`Inside. A plug plate, P2 head flex. Screws 1, 2.`"""
    say = reading.say
    keys = dict.fromkeys(key for line in lines for key in line.things)
    there = [
        key
        for key in keys
        if {key, reading.device.things[key].id} & shown and reading.labels.of(key)
    ]
    screws = dict.fromkeys(
        one.number for key in there for one, _ in reading.labels.of_hole.get(key, ())
    )
    others = [key for key in there if key not in reading.labels.of_hole]
    parts = [say("list.sentence", words=name)]
    if others:
        words = say.listed([reading.named(key) for key in others], "unit")
        parts.append(say("list.sentence", words=words))
    if screws:
        numbers = say.listed([text(number, Mark.REFERENCE) for number in screws], "unit")
        holes = sum(key in reading.labels.of_hole for key in there)
        parts.append(say("picture.screws", count=holes, numbers=numbers))
    return joined(parts, " ")
