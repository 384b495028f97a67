"""A YAML text into nodes with their places: no tags, no types, nothing of it can run."""

from functools import lru_cache
from typing import Any

from yaml import YAMLError
from yaml._yaml import CParser
from yaml.error import MarkedYAMLError
from yaml.nodes import MappingNode, ScalarNode

from guidebuild.read.faults import needs_quotes, yaml_not_readable
from guidebuild.read.report import Report
from guidebuild.read.shape.reading import TRAPPED, Reading
from guidebuild.read.yaml.problems import in_plain_words
from guidebuild.read.yaml.traps import Trap, traps
from guidebuild.source.edit import Edit
from guidebuild.source.span import Span
from guidebuild.source.text import Source

SHORT = 400  # characters: many blocks of a guide read the same, and are taken apart once


class _Nodes(CParser):
    """PyYAML's composer over the C parser, and nothing else: a tag has no meaning, a value no type."""

    def resolve(self, *of_a_node: Any) -> str:
        """Every node's tag."""
        return ""

    def descend_resolver(self, *of_a_node: Any) -> None:
        """There is nothing to resolve."""

    def ascend_resolver(self) -> None:
        """There is nothing to resolve."""


def compose(
    source: Source, start: int, end: int, report: Report, where: str
) -> tuple[Any, Reading] | None:
    """The root node of the YAML text at `start` to `end`, and how to read it; None where it can't be read.

    A text without any value gives a node of None.
    """
    text = source.text[start:end]
    reading = Reading(source, start, end - start, report, where)
    node, found = _known(text) if len(text) < SHORT else _nodes(text)
    for trap in found:
        _tell(trap, reading)
    if isinstance(node, Exception):
        if not found:
            _unreadable(node, reading, text)
        report.lose(source.path)
        return None
    return node, reading


def _nodes(text: str) -> tuple[Any, tuple[Trap, ...]]:
    """The root node, or what went wrong, and the traps. No type of YAML's own is taken."""
    found = tuple(traps(text))
    loader: Any = _Nodes(_harmless(text, found))
    try:
        node = loader.get_single_node()
    except (YAMLError, RecursionError) as error:
        return error, found
    finally:
        loader.dispose()
    if found and node is not None:
        _restore(node, {trap.start: text[trap.start : trap.end] for trap in found})
    return node, found


_known = lru_cache(maxsize=1000)(_nodes)


def _harmless(text: str, found: tuple[Trap, ...]) -> str:
    """The text with every trap replaced by as many letters, so that all places stay as they are."""
    for trap in found:
        size = trap.end - trap.start
        text = text[: trap.start] + "x" * size + text[trap.end :]
    return text


def _restore(node: Any, said: dict[int, str]) -> None:
    """What the author wrote goes back into the values that were made harmless."""
    waiting, seen = [node], set()
    while waiting:
        one = waiting.pop()
        if id(one) in seen:
            continue
        seen.add(id(one))
        if type(one) is ScalarNode:
            if one.start_mark.index in said:
                one.value, one.style = said[one.start_mark.index], TRAPPED
        elif type(one) is MappingNode:
            waiting.extend(part for pair in one.value for part in pair)
        else:
            waiting.extend(one.value)


def _tell(trap: Trap, reading: Reading) -> None:
    base = reading.offset
    span = Span(reading.source, base + trap.start, base + trap.end)
    quoted = "'" + span.text.replace("'", "''") + "'" if '"' in span.text else f'"{span.text}"'
    quoted = quoted.replace("\\", "\\\\") if quoted[0] == '"' else quoted
    reading.report.tell(needs_quotes, span, lost=False, edits=(Edit(span, quoted),), what=trap.what)


def _unreadable(error: Exception, reading: Reading, text: str) -> None:
    at = getattr(error, "position", 0)
    mark = error.problem_mark if isinstance(error, MarkedYAMLError) else None
    if mark is not None:
        at = mark.index
    at = min(at, max(len(text.rstrip()) - 1, 0))
    line_end = text.find("\n", at)
    line_end = len(text) if line_end < 0 else line_end
    end = max(at + 1, at + len(text[at:line_end].rstrip()))
    size = len(reading.source.text)
    span = Span(reading.source, min(reading.offset + at, size), min(reading.offset + end, size))
    problem, do = in_plain_words(error)
    reading.report.tell(yaml_not_readable, span, problem=problem, do=do)
