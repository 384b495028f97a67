"""Options and answers named in conditions."""

import re
from collections.abc import Iterable, Mapping

from guidebuild.device.condition import Condition, Is, leaves
from guidebuild.device.option import Option
from guidebuild.read.faults import unknown_id, unknown_value
from guidebuild.read.report import Report
from guidebuild.source.finding import Related
from guidebuild.source.nearest import nearest
from guidebuild.source.respelt import respelt
from guidebuild.source.span import Span


def look_up_conditions(
    conditions: Iterable[Condition | None],
    options: Mapping[str, Option],
    report: Report,
    related: tuple[Related, ...] = (),
) -> None:
    """Every comparison must name an option that exists, with answers that it has."""
    for condition in conditions:
        for leaf in leaves(condition):
            option = options.get(leaf.option)
            if option is None:
                _no_option(leaf, options, report, related)
            elif option.values and not leaf.values <= {value.id for value in option.values}:
                _no_value(leaf, option, report)


def _no_option(
    leaf: Is, options: Mapping[str, Option], report: Report, related: tuple[Related, ...]
) -> None:
    span = _word(leaf.span, leaf.option)
    guess = nearest(leaf.option, options)
    listed = ", ".join(f"`{id_}`" for id_ in options)
    report.tell(
        unknown_id,
        span,
        edits=respelt(span, leaf.option, options),
        related=related,
        same=("option", leaf.option),
        what="option",
        id=leaf.option,
        do=f"write `{guess}`" if guess else f"the options here: {listed or 'none'}",
    )


def _no_value(leaf: Is, option: Option, report: Report) -> None:
    known = [value.id for value in option.values]
    for value in sorted(leaf.values - set(known)):
        span = _word(leaf.span, value, after=len(leaf.option))
        report.tell(
            unknown_value,
            span,
            edits=respelt(span, value, known),
            related=(Related(option.span, "its answers stand here"),),
            value=value,
            what=f"answer to `{option.id}`",
            do="write " + " or ".join(f"`{one}`" for one in known),
        )


def _word(span: Span, word: str, after: int = 0) -> Span:
    """Where a word stands in a comparison."""
    found = re.compile(rf"(?<![\w-]){re.escape(word)}(?![\w-])").search(span.text, after)
    if found is None:
        return span
    return Span(span.source, span.start + found.start(), span.start + found.end())
