"""Small outcomes of guides for the tests of what is made of them."""

from guidebuild.build.outcome import Outcome
from guidebuild.guide.guide import Allow
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Category, Finding, Loudness, Told
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source


def span(source: Source, text: str) -> Span:
    """Where a text stands first."""
    start = source.text.index(text)
    return Span(source, start, start + len(text))


def found(
    source: Source,
    text: str,
    rule: str = "look-alike-screws",
    category: Category = Category.CORRECTNESS,
    told: Told | None = None,
) -> Finding:
    """A finding of a rule at a text."""
    return Finding(rule, category, span(source, text), f"{text} is wrong", "mend it", told=told)


def allow(source: Source, rule: str, reason: str = "It is so here.", over: str = "") -> Allow:
    """An allow that stands in the source, over a text of it or over the whole."""
    place = span(source, over) if over else Span(source, 0, len(source.text))
    at = span(source, rule)
    return Allow(Said(rule, at), Said(reason, at), place)


def outcome(
    source: Source, *findings: Finding, allows: tuple[Allow, ...] = (), status: str = "released"
) -> Outcome:
    """A guide with these findings, as its work left it."""
    slips = tuple(Slip(each, Loudness.ERROR, (source.path,)) for each in findings)
    whole = (source.path, 0, len(source.text))
    return Outcome(source.path, status, whole, allows, 1, slips)
