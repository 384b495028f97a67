"""Where the front matter of a Markdown file stands."""

import re
from dataclasses import dataclass

from guidebuild.read.faults import fence_not_closed, wrong_type
from guidebuild.read.report import Report
from guidebuild.source.span import Span
from guidebuild.source.text import Source

_RULE = re.compile(r"^---[ \t]*\r?$", re.M)
_HEADING = re.compile(r"^#{1,3} ", re.M)


@dataclass(frozen=True, slots=True)
class Front:
    """Offsets: of the YAML text, and of the first line of Markdown after it."""

    start: int
    end: int
    body: int


def front(source: Source, report: Report) -> Front | None:
    """The front matter, or None (and told) where there is none."""
    text = source.text
    opening = _RULE.match(text)
    if opening is None:
        first = Span(source, 0, len(source.line(1)))
        report.tell(
            wrong_type,
            first,
            what="the file",
            wanted="begin with its front matter",
            found="",
            do="write `title:`, `device:` and `goal:` between two lines of `---` at the top",
        )
        return None
    start = opening.end() + 1
    closing = _RULE.search(text, start)
    if closing is None:
        span = Span(source, 0, 3)
        do = "end the front matter with a line of `---`"
        report.tell(fence_not_closed, span, what="the front matter", do=do)
        heading = _HEADING.search(text, start)
        end = heading.start() if heading else len(text)
        report.excuse(Span(source, 0, end))
        return Front(min(start, end), end, end)
    return Front(start, closing.start(), min(closing.end() + 1, len(text)))
