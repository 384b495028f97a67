"""A step as a reader meets it."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from guidebuild.draw.runs import Runs
from guidebuild.draw.svg import Box
from guidebuild.draw.view import Drawn
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.wait import Wait
from guidebuild.guide.inside import items
from guidebuild.guide.step import Fork, Step
from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.cautions import Panel, panels
from guidebuild.outputs.html.page.checks import CheckView
from guidebuild.outputs.html.page.code import step_code
from guidebuild.outputs.html.page.film import FilmView, film_views
from guidebuild.outputs.html.page.flow import Flow
from guidebuild.outputs.html.page.nodes import Node
from guidebuild.outputs.html.page.photo import PhotoView, photo_views
from guidebuild.outputs.html.page.pictures import Picture, locators
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.tally import Tally, tally
from guidebuild.outputs.html.page.tools import short_names
from guidebuild.outputs.html.page.when import When
from guidebuild.proof.proof import Passage
from guidebuild.translate.messages.text import Text, joined, text


@dataclass(frozen=True, slots=True)
class StepView:
    """Everything of a step; `lines` and `checks` again flat, for lists that are made of all steps."""

    id: str
    number: str
    code: str
    title: Text
    meta: Text
    time: Text
    tools: Text
    when: When | None
    optional: bool
    panels: tuple[Panel, ...]
    photos: tuple[PhotoView, ...]
    films: tuple[FilmView, ...]
    pictures: tuple[Picture, ...]
    nodes: tuple[Node, ...]
    tally: Tally
    lines: tuple[Line, ...]
    checks: tuple[CheckView, ...]
    passage: Passage


def step_view(
    reading: Reading,
    step: Step,
    drawn: Mapping[str, Drawn],
    screws: Box | None,
    runs: Runs,
    last: str | None = None,
) -> StepView:
    """The view of one step; `runs` are the page's, `last` is the view that the reader saw before it."""
    passage = reading.passages[step.id]
    flow = Flow(reading, step, passage, screws)
    nodes = flow.nodes()
    cautions = [one for one in step.flow if isinstance(one, Caution)]
    number = reading.numbers.steps[step.id]
    measures = any(check.measured is not None for check in flow.checks)
    pictures = locators(reading, passage, flow.lines, drawn, runs, last if measures else None)
    time = reading.say.time(step.minutes.value * 60) if step.minutes else ()
    tools = reading.say.listed(
        [text(name) for name in dict.fromkeys(short_names(reading, flow.lines))], "unit"
    )
    guide = reading.guide
    return StepView(
        id=step.id,
        number=number,
        code=step_code(
            guide.number.text if guide.number else guide.id,
            guide.issue.text if guide.issue else "",
            number,
        ),
        title=reading.author.words(step.title),
        meta=joined(_meta(reading, step, time, tools), " · "),
        time=time,
        tools=tools,
        when=_when(reading, passage),
        optional=step.optional,
        panels=panels(reading, cautions, passage.shown),
        photos=photo_views(reading, step, flow.lines),
        films=film_views(reading, step, passage.shown),
        pictures=pictures,
        nodes=nodes,
        tally=tally(reading, passage),
        lines=tuple(flow.lines),
        checks=tuple(flow.checks),
        passage=passage,
    )


def _when(reading: Reading, passage: Passage) -> When | None:
    if passage.stage.remedy is not None:
        return None  # whether a check sends the reader here is told at the check
    return reading.when(passage.shown, reading.configurations.everywhere)


def _meta(reading: Reading, step: Step, time: Text, tools: Text) -> Iterator[Text]:
    yield time
    waits = sum(one.time.value for one in items(step) if isinstance(one, Wait))
    if waits and not any(isinstance(one, Fork) for one in step.flow):
        yield reading.say("step.waiting", time=reading.say.time(waits))
    if step.people is not None and step.people > 1:
        yield reading.say("step.people", count=step.people)
    yield tools
