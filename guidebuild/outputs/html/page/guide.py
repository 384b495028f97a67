"""The whole page of a guide, as one value."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import chain

from guidebuild.draw.runs import Runs
from guidebuild.draw.screw import screw_symbols
from guidebuild.draw.squares import squares_symbol
from guidebuild.draw.symbols import alert_symbol
from guidebuild.draw.view import Drawn
from guidebuild.draw.view_symbols import view_symbols
from guidebuild.guide.stage import Stage
from guidebuild.outputs.html.page.after import AfterCare, after_care
from guidebuild.outputs.html.page.before import Fact, before_facts, who_for
from guidebuild.outputs.html.page.behind import names_behind
from guidebuild.outputs.html.page.faults import Fault, faults
from guidebuild.outputs.html.page.identify import Identity, identity
from guidebuild.outputs.html.page.index import Found, found_by
from guidebuild.outputs.html.page.kits import inspections
from guidebuild.outputs.html.page.left import LeftRow, left_rows
from guidebuild.outputs.html.page.plan import PlanStage, plan
from guidebuild.outputs.html.page.portrait import portrait
from guidebuild.outputs.html.page.prose import Block
from guidebuild.outputs.html.page.questions import Question, questions
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.returned import ReturnSheet, return_sheet
from guidebuild.outputs.html.page.screws import ScrewRow, guide_box, screw_rows
from guidebuild.outputs.html.page.standing import Standing, standing
from guidebuild.outputs.html.page.step import StepView, step_view
from guidebuild.outputs.html.page.supplies import Supply, supplies
from guidebuild.outputs.html.page.times import waiting_time, work_time
from guidebuild.outputs.html.page.tools import ToolRow, tool_rows
from guidebuild.outputs.html.page.when import When
from guidebuild.translate.messages.text import Text


@dataclass(frozen=True, slots=True)
class StageView:
    """A stage with its steps; `then` is what to do when a remedy did not help."""

    id: str
    title: Text
    remedy: bool
    when: When | None
    steps: tuple[StepView, ...]
    resume: tuple[str, str] | None
    stop: Text
    then: Text


@dataclass(frozen=True, slots=True)
class GuideView:
    """Everything that the page shows, in no language but the reader's."""

    id: str
    title: Text
    device: Text
    number: str
    issue: str
    status: str
    publisher: str
    help_line: str
    intro: tuple[Block, ...]
    time: Text
    waiting: Text
    who: Text
    screws_out: int
    identify: Identity | None
    before: tuple[Fact, ...]
    tools: tuple[ToolRow, ...]
    kits: tuple[Text, ...]
    supplies: tuple[Supply, ...]
    inspect: tuple[Text, ...]
    screws: tuple[ScrewRow, ...]
    standing: tuple[Standing, ...]
    plan: tuple[PlanStage, ...]
    stages: tuple[StageView, ...]
    after: AfterCare
    faults: tuple[Fault, ...]
    left: tuple[LeftRow, ...]
    returned: ReturnSheet
    tried_on: tuple[tuple[str, str, str], ...]
    questions: tuple[Question, ...]
    found_by: tuple[Found, ...]
    symbols: str
    portrait: str
    behind: Text  # names whose translation is older than its source

    @property
    def steps_of_plan(self) -> int:
        """How many steps the main way has."""
        return sum(len(stage.rows) for stage in self.plan)

    @property
    def main(self) -> tuple[StageView, ...]:
        """The stages of the main way."""
        return tuple(stage for stage in self.stages if not stage.remedy)

    @property
    def remedies(self) -> tuple[StageView, ...]:
        """The stages that only a check leads to."""
        return tuple(stage for stage in self.stages if stage.remedy)

    @property
    def steps(self) -> tuple[StepView, ...]:
        """All steps, the main way first."""
        return tuple(chain.from_iterable(stage.steps for stage in (*self.main, *self.remedies)))


def guide_view(reading: Reading, drawn: Mapping[str, Drawn]) -> GuideView:
    """The page; `drawn` holds the device's views by id."""
    guide = reading.guide
    runs = Runs()
    by_id = _steps(reading, drawn, runs)
    stages = [_stage(reading, stage, by_id) for stage in guide.stages]
    steps = [step for stage in stages if not stage.remedy for step in stage.steps]
    screws = screw_rows(reading)
    everything = [*steps, *(s for stage in stages if stage.remedy for s in stage.steps)]
    settings = reading.settings
    wrong = faults(reading, everything)
    return GuideView(
        id=guide.id,
        title=reading.author.words(guide.title),
        device=reading.author.words(reading.device.name),
        number=guide.number.text if guide.number else "",
        issue=guide.issue.text if guide.issue else "",
        status=guide.status.text if guide.status else "",
        publisher=settings.publisher.text if settings.publisher else "",
        help_line=settings.help_line.text if settings.help_line else "",
        intro=tuple(reading.author.block(one) for one in guide.intro),
        time=work_time(reading),
        waiting=waiting_time(reading),
        who=who_for(reading),
        screws_out=len(reading.labels.loose),
        identify=identity(reading),
        before=before_facts(reading),
        tools=tool_rows(reading, everything),
        kits=tuple(reading.author.words(kit.name) for kit in reading.kits),
        supplies=supplies(reading),
        screws=screws,
        standing=standing(reading),
        plan=plan(reading, [stage for stage in stages if not stage.remedy]),
        inspect=tuple(inspections(reading)),
        stages=tuple(stages),
        after=after_care(reading, everything),
        faults=wrong,
        returned=return_sheet(reading, everything, wrong),
        left=left_rows(reading, screws, drawn),
        tried_on=tuple((one.date.text, one.serial.text, one.by.text) for one in guide.tried_on),
        questions=questions(reading),
        found_by=found_by(reading),
        symbols=_symbols(reading, drawn, everything) + runs.symbols(),
        portrait=portrait(reading, drawn),
        behind=names_behind(reading, everything),
    )


def _steps(reading: Reading, drawn: Mapping[str, Drawn], runs: Runs) -> dict[str, StepView]:
    """The steps by id, each with the view that was seen before it."""
    box, last = guide_box(reading), None
    found = {}
    for step in reading.guide.steps:
        view = step_view(reading, step, drawn, box, runs, last)
        last = view.pictures[-1].view if view.pictures else last
        found[step.id] = view
    return found


def _stage(reading: Reading, stage: Stage, by_id: Mapping[str, StepView]) -> StageView:
    remedy = stage.remedy
    everywhere = reading.configurations.everywhere
    resume = None
    if remedy is not None and remedy.resume is not None:
        number = reading.numbers.steps.get(remedy.resume.text)
        resume = (remedy.resume.text, number) if number else None
    where = reading.configurations.bits(stage.when)
    return StageView(
        id=stage.id,
        title=reading.author.words(stage.title),
        remedy=remedy is not None,
        when=reading.when(where, everywhere) if remedy is None else None,
        steps=tuple(by_id[step.id] for step in stage.steps),
        resume=resume,
        stop=reading.author.words(remedy.stop) if remedy else (),
        then=reading.author.words(stage.then),
    )


def _symbols(reading: Reading, drawn: Mapping[str, Drawn], steps: Sequence[StepView]) -> str:
    """What the drawings of the page refer to, once."""
    worked = tuple(one.screw for one in reading.labels.screws)
    others = (case.value for hole in reading.device.holes for case in hole.screw)
    screws = screw_symbols(*worked, *others, lying=worked, box=guide_box(reading))
    used = dict.fromkeys(picture.view for step in steps for picture in step.pictures)
    used |= {id: None for id, view in drawn.items() if _shows_part(reading, view)}
    squares = squares_symbol(len(reading.labels.loose))
    return alert_symbol() + screws + squares + "".join(view_symbols(drawn[id]) for id in used)


def _shows_part(reading: Reading, view: Drawn) -> bool:
    """Whether the list of what is left may draw a part from this view."""
    ids = {reading.device.things[key].id for key in reading.labels.of_thing}
    return any(layer.id in ids for layer in view.layers)
