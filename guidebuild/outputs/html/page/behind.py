"""Names that are behind their source: a name stands in a hundred lines, so it is told once, at the head of the page."""

from collections.abc import Iterable, Iterator

from guidebuild.device.things import Hole
from guidebuild.guide.blocks.use import Use
from guidebuild.guide.inside import items
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.step import StepView
from guidebuild.source.said import Said
from guidebuild.translate.messages.text import Age, Piece, Text, text


def names_behind(reading: Reading, steps: Iterable[StepView]) -> Text:
    """`Akkudeckel (battery lid), …`: each outdated name that the page may show, with the source's own; or nothing."""
    found: dict[str, Text] = {}
    for said in _names(reading, steps):
        stale = reading.author.outdated(said)
        if stale is not None:
            now = (Piece(said.text, age=Age.BEHIND),)
            source = (Piece(stale.source, language=reading.guide.language),)
            found.setdefault(said.text, (*now, *text(" ("), *source, *text(")")))
    return reading.say.listed(tuple(found.values()), "unit") if found else ()


def _names(reading: Reading, steps: Iterable[StepView]) -> Iterator[Said]:
    device = reading.device
    for key in (*reading.labels.of_thing, *reading.labels.of_hole):
        thing = device.things[key]
        group = device.groups.get(thing.group) if isinstance(thing, Hole) else None
        yield from _there(group.name if group else thing.name)
    for view in device.views.values():
        yield from _there(view.name)
    yield from device.functions.values()
    for kit in reading.kits:
        yield from (kit.name, *(form.name for form in kit.forms if form.name))
    for id in sorted(_used(reading, steps)):
        if id in reading.tools:
            yield from _there(reading.tools[id].name)


def _there(name: Said | None) -> Iterator[Said]:
    if name is not None:
        yield name


def _used(reading: Reading, steps: Iterable[StepView]) -> set[str]:
    """Tools and materials by their ids."""
    tools = {id for step in steps for line in step.lines for use in line.tools for id in use.ids}
    uses = (item for step in reading.guide.steps for item in items(step) if isinstance(item, Use))
    return tools | {said.text for use in uses for said in use.items}
