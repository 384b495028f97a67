"""A piece of YAML in an author's file, read as a schema says."""

from guidebuild.read.faults import wrong_type
from guidebuild.read.report import Report
from guidebuild.read.shape.compile import reader
from guidebuild.read.shape.entry import LOST, Entry
from guidebuild.read.yaml.compose import compose
from guidebuild.source.span import Span
from guidebuild.source.text import Source


def read_entry(
    source: Source, start: int, end: int, schema: str, where: str, report: Report
) -> Entry | None:
    """The map that the text at `start` to `end` says; None where nothing can be read of it."""
    found = read_value(source, start, end, schema, where, report)
    return found if isinstance(found, Entry) else None


def read_entries(
    source: Source, start: int, end: int, schema: str, where: str, report: Report
) -> tuple[Entry, ...]:
    """As `read_entry`, of a text that says one map or a list of maps."""
    found = read_value(source, start, end, schema, where, report)
    return found if isinstance(found, tuple) else ()


def read_value(
    source: Source, start: int, end: int, schema: str, where: str, report: Report
) -> object:
    """What the schema makes of the text, or LOST."""
    composed = compose(source, start, end, report, where)
    if composed is None:
        return LOST
    node, reading = composed
    if node is None:
        at = Span(source, start, end) if source.text[start:end].strip() else _line(source, start)
        report.tell(
            wrong_type,
            at,
            what=f"`{where}`",
            wanted="say something",
            found=", and nothing stands here",
            do="write its keys, or take it out",
        )
        return LOST
    return reader(schema)(node, reading)


def _line(source: Source, at: int) -> Span:
    """The line before `at`, where an empty text was opened; the file's first line if there is none."""
    number = max(source.position(min(at, len(source.text)))[0] - 1, 1)
    start = source.line_starts[number - 1]
    return Span(source, start, start + len(source.line(number)))
