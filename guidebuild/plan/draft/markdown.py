"""A script as Markdown with typed blocks, as the reader takes it."""

import re
from collections.abc import Iterable, Iterator, Mapping

from guidebuild.plan.draft.script import (
    Block,
    Comment,
    Entry,
    Item,
    Script,
    Stage,
    Step,
    Text,
    Value,
)

_NEEDS_QUOTES = re.compile(r"""[-?:,\[\]{}#&*!|>'"%@`]|.*(: | #|:$)|\s|.*\s$|$|~$""")
_INSIDE_FLOW = re.compile(r""".*[,\[\]{}"']""")


def markdown(script: Script) -> str:
    """The whole file, with one line end at its end."""
    parts = ["---", *yaml(script.front), "---", ""]
    parts += [script.intro, ""] if script.intro else []
    return "\n".join([*parts, written(script.stages)])


def written(stages: Iterable[Stage]) -> str:
    """Stages only, with one line end at the end."""
    lines = [line for stage in stages for line in _stage(stage)]
    return "\n".join(lines).rstrip("\n") + "\n"


def _stage(stage: Stage) -> Iterator[str]:
    yield f"# [{stage.title}]({stage.shared})" if stage.shared else f"# {stage.title}"
    yield ""
    if stage.entry:
        yield from _fence("stage", yaml(stage.entry))
    for step in stage.steps:
        yield from _step(step)


def _step(step: Step) -> Iterator[str]:
    yield f"## {step.title}"
    yield ""
    said: Entry = {key: value for key, value in (("id", step.id), ("when", step.when)) if value}
    if said:
        yield from _fence("step", yaml(said))
    for item in step.items:
        yield from _item(item)


def _item(item: Item) -> Iterator[str]:
    match item:
        case Block(name, entries):
            yield from _fence(name, _entries(entries))
        case Text(words):
            yield from (words, "")
        case Comment(words):
            yield from (f"<!-- {words} -->", "")


def _fence(name: str, lines: Iterable[str]) -> Iterator[str]:
    yield f"```{name}"
    yield from lines
    yield from ("```", "")


def _entries(entries: tuple[Entry, ...]) -> Iterator[str]:
    if len(entries) == 1:
        yield from yaml(entries[0])
        return
    for entry in entries:
        for number, line in enumerate(yaml(entry)):
            yield ("  " if number else "- ") + line


def yaml(entry: Entry) -> list[str]:
    """The keys of a map, a line each; lists of sentences on lines of their own."""
    lines = []
    for key, value in entry.items():
        if isinstance(value, tuple) and any(" " in one for one in value) and len(value) > 1:
            lines.append(f"{key}:")
            lines += [f"  - {_scalar(one)}" for one in value]
        else:
            lines.append(f"{key}: {flow(value, inside=False)}")
    return lines


def flow(value: Value, inside: bool = True) -> str:
    match value:
        case bool():
            return "true" if value else "false"
        case int():
            return str(value)
        case str():
            return _scalar(value, inside)
        case Mapping():
            return "{" + ", ".join(f"{key}: {flow(one)}" for key, one in value.items()) + "}"
        case _:
            return "[" + ", ".join(_scalar(one, True) for one in value) + "]"


def _scalar(text: str, inside: bool = False) -> str:
    if _NEEDS_QUOTES.match(text) or (inside and _INSIDE_FLOW.match(text)):
        return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'
    return text
