"""The locators of a step: the view that shows most of its work, one for each form in which it looks different."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from guidebuild.device.acts import REPLACING
from guidebuild.draw.cases import Case, cases_at
from guidebuild.draw.locator import Locator, locator
from guidebuild.draw.look import End, Look, Reference
from guidebuild.draw.runs import Runs
from guidebuild.draw.scene import view_for
from guidebuild.draw.view import Drawn
from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.when import When
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage
from guidebuild.translate.messages.text import Mark, Text, joined, text

_ROWS = (
    ("top-left", "top", "top-right"),
    ("left", "middle", "right"),
    ("bottom-left", "bottom", "bottom-right"),
)


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawing with its caption, in the configurations of `when`; `view` is the view's id."""

    locator: Locator
    runs: Runs
    title: str
    caption: Text
    view: str
    when: When | None = None

    @property
    def svg(self) -> str:
        """The drawing, to be asked for when all of the page are known; its caption describes it."""
        return self.locator.written(self.runs, self.title)


def locators(
    reading: Reading,
    passage: Passage,
    lines: list[Line],
    drawn: Mapping[str, Drawn],
    runs: Runs,
    last: str | None = None,
) -> tuple[Picture, ...]:
    """The drawings, of the view `last` where no view shows any of the step's work; none where there is none."""
    renewed = _renewed(reading, passage)
    id = view_for(reading.device, passage, drawn) or _showing(drawn, renewed) or last
    if id is None:
        return ()
    orders = {key: n for line in lines for key, n in line.orders}
    labels = reading.labels
    cases = cases_at(drawn[id], passage, labels.on_drawings, labels.apart, orders)
    return tuple(
        _picture(
            reading,
            passage,
            lines,
            drawn[id],
            runs,
            _with_renewed(reading, case, drawn[id], renewed),
        )
        for case in cases
    )


def _picture(
    reading: Reading, passage: Passage, lines: list[Line], drawn: Drawn, runs: Runs, case: Case
) -> Picture:
    view = reading.device.views[drawn.name]
    name = view.name.text if view.name else drawn.name.replace("-", " ")
    found = locator(drawn, case.scene, runs)
    caption = joined([_caption(reading, name, lines, case), _no_room(reading, found)], " ")
    title = reading.say.plain("picture.title", view=name)
    when = reading.when(case.where, passage.shown)
    return Picture(found, runs, title, caption, drawn.name, when)


def _no_room(reading: Reading, found: Locator) -> Text:
    """Where things are whose numbers found no place."""
    say, said = reading.say, []
    for one in found.unplaced:
        key = one.reference.thing
        keys = (key,) if key in reading.device.things else reading.device.names.get(key, ())
        thing = reading.named(keys[0]) if keys else text(one.reference.label, Mark.REFERENCE)
        said.append(say(f"picture.at.{_ROWS[one.row][one.column]}", thing=thing))
    return say("picture.no-room", things=say.listed(said, "unit")) if said else ()


def _renewed(reading: Reading, passage: Passage) -> list[str]:
    """Keys of joints that are renewed in the step: nothing of them is on the device, but their place is."""
    moves = [one.doing for one in passage.walked if isinstance(one.doing, Move)]
    joints = {joint.key for joint in reading.device.joints}
    return [move.thing for move in moves if move.verb in REPLACING and move.thing in joints]


def _showing(drawn: Mapping[str, Drawn], ids: list[str]) -> str | None:
    """The first view that draws one of these."""
    return next((id for id, one in drawn.items() if any(one.box_of(key) for key in ids)), None)


def _with_renewed(reading: Reading, case: Case, drawn: Drawn, renewed: list[str]) -> Case:
    """The scene with the places of what is renewed marked as this step's work."""
    scene = case.scene
    known = {reference.thing for reference in scene.references}
    there = [key for key in renewed if drawn.box_of(key) and key not in known]
    looks = {**scene.looks, **{key: Look.NOW for key in there}}
    more = tuple(Reference(reading.labels.of(key), key, End.ARROW) for key in there)
    return Case(case.where, replace(scene, looks=looks, references=(*scene.references, *more)))


def _caption(reading: Reading, name: str, lines: list[Line], case: Case) -> Text:
    """`Inside. A plug plate, P2 head flex. Screws 1, 2.`"""
    say = reading.say
    shown = {reference.thing for reference in case.scene.references}
    keys = dict.fromkeys(key for line in lines for key in line.things)
    there = [
        key
        for key in keys
        if {key, reading.device.things[key].id} & shown and reading.labels.of(key)
    ]
    screws = dict.fromkeys(
        one.number
        for key in there
        for one, where in reading.labels.of_hole.get(key, ())
        if where & case.where
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
