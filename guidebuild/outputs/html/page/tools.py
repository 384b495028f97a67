"""Tools that lines use: their short names at a step, and the list of all of them before the work."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Protocol

from guidebuild.outputs.html.page.acts.line import Line, ToolUse
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.screw_words import drive_words
from guidebuild.outputs.html.page.when import When
from guidebuild.translate.messages.text import Text, joined, plain, text


class WithLines(Protocol):
    """A step, as far as its tools are asked."""

    @property
    def id(self) -> str: ...
    @property
    def number(self) -> str: ...
    @property
    def lines(self) -> tuple[Line, ...]: ...


@dataclass(frozen=True, slots=True)
class ToolRow:
    """A tool, the screws that it turns, and the steps (id, number) that use it."""

    name: Text
    screws: tuple[str, ...]
    steps: tuple[tuple[str, str], ...]
    when: When | None
    from_kit: str = ""


@dataclass(slots=True)
class _Used:
    screws: dict[str, None] = field(default_factory=dict)
    steps: dict[str, str] = field(default_factory=dict)
    where: int = 0


def short_names(reading: Reading, lines: Iterable[Line]) -> Iterator[str]:
    """`TX8`, `plastic spudger`: what stands at the head of a step."""
    for line in lines:
        for use in line.tools:
            if use.drive is not None:
                yield plain(drive_words(reading.say, use.drive))
            else:
                names = [text(reading.inside(reading.tool(id))) for id in use.ids]
                yield "".join(piece.words for piece in reading.say.listed(names, "or"))


def tool_rows(reading: Reading, steps: Iterable[WithLines]) -> tuple[ToolRow, ...]:
    """All tools in the order in which they are taken up."""
    used: dict[ToolUse, _Used] = {}
    for step in steps:
        for line in step.lines:
            for use in line.tools:
                one = used.setdefault(use, _Used())
                one.screws |= dict.fromkeys(line.references if line.screw or use.drive else ())
                one.steps[step.id] = step.number
                one.where |= line.where
    return tuple(_row(reading, use, one) for use, one in used.items())


def _row(reading: Reading, use: ToolUse, used: _Used) -> ToolRow:
    everywhere = reading.configurations.everywhere
    kit_tools = _kit_tools(reading)
    return ToolRow(
        name=_name(reading, use),
        screws=tuple(used.screws),
        steps=tuple(used.steps.items()),
        when=reading.when(used.where, everywhere),
        from_kit=next((kit_tools[id] for id in use.ids if id in kit_tools), ""),
    )


def _kit_tools(reading: Reading) -> Mapping[str, str]:
    return {said.text: kit.name.text for kit in reading.kits for said in kit.tools}


def _name(reading: Reading, use: ToolUse) -> Text:
    if not use.ids:
        return reading.say("need.driver", drive=drive_words(reading.say, use.drive or ""))
    names = []
    for id in use.ids:
        known = reading.tools.get(id)
        size = reading.author.words(known.size) if known else ()
        names.append(joined([text(reading.tool(id)), size], reading.say.plain("list.between")))
    return reading.say.listed(names, "or")
