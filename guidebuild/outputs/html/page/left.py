"""What is left on the mat: every screw and part of the guide, the hole it belongs in, and the way back to it."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from guidebuild.device.things import Part
from guidebuild.draw.svg import Box, drawing, element, use
from guidebuild.draw.view import Drawn
from guidebuild.draw.view_symbols import layer_id
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.screws import ScrewRow
from guidebuild.outputs.html.page.way_back import Closings, closings, way_back
from guidebuild.translate.messages.text import Text, joined, text

_LARGEST = 70.0  # mm: a part that is longer is drawn at half its size


@dataclass(frozen=True, slots=True)
class LeftRow:
    """`mark`: its number or letter; `step`: (id, number) of the step that puts it in; `undo` the way there.

    `undo` are (id, number), the last step first, as they must be undone by who stands at the end.
    """

    mark: str
    svg: str
    scale: str
    what: Text
    place: Text
    step: tuple[str, str]
    undo: tuple[tuple[str, str], ...]


def left_rows(
    reading: Reading, screws: Sequence[ScrewRow], drawn: Mapping[str, Drawn]
) -> tuple[LeftRow, ...]:
    """Screws by length, the shortest first, then parts in the order of the work."""
    closed = closings(reading)
    loose = [row for row in screws if not row.captive and row.back]
    loose.sort(key=lambda row: (row.screw.length or 0, row.number))
    return (
        *(_screw(reading, closed, row) for row in loose),
        *_parts(reading, closed, drawn),
    )


def _screw(reading: Reading, closed: Closings, row: ScrewRow) -> LeftRow:
    holes = reading.say(
        "left.holes", count=len(row.holes), holes=reading.say.plain("list.between").join(row.holes)
    )
    place = joined([text(row.group), holes], reading.say.plain("list.between"))
    undo = way_back(reading, closed, row.keys)
    return LeftRow(
        row.number, row.svg, "1:1", row.designation, place, row.back[0], _numbered(reading, undo)
    )


def _parts(reading: Reading, closed: Closings, drawn: Mapping[str, Drawn]) -> Iterator[LeftRow]:
    for key in reading.labels.of_thing:
        part = reading.device.things[key]
        step = closed.last_step(key)
        if not isinstance(part, Part) or step is None:
            continue
        svg, scale = _outline(part.id, drawn)
        host = next(iter(reading.device.names.get(part.host.text, ())), None) if part.host else None
        place = reading.say("left.on", part=reading.inside(reading.name(host))) if host else ()
        undo = way_back(reading, closed, (key,))
        yield LeftRow(
            mark=reading.labels.of(key),
            svg=svg,
            scale=scale,
            what=text(reading.name(key)),
            place=place,
            step=(step, reading.numbers.steps[step]),
            undo=_numbered(reading, undo),
        )


def _numbered(reading: Reading, ids: Sequence[str]) -> tuple[tuple[str, str], ...]:
    return tuple((id, reading.numbers.steps[id]) for id in ids)


def _outline(id: str, drawn: Mapping[str, Drawn]) -> tuple[str, str]:
    """The part as the first view that shows it draws it, true to size where there is room."""
    for view in drawn.values():
        box = view.box_of(id)
        if box is None:
            continue
        layers = [n for n, layer in enumerate(view.layers) if layer.id == id]
        half = max(box.width, box.height) > _LARGEST
        parts = element("g", *(use(layer_id(view, n)) for n in layers))
        return drawing("part", _air(box), parts, mm=0.5 if half else 1), "1:2" if half else "1:1"
    return "", ""


def _air(box: Box) -> Box:
    return box.grown(1.0)
