"""Steps that got another heading while catalogues know the old id, with the edit that keeps it."""

import re
from collections.abc import Iterator, Mapping, Sequence

from guidebuild.build.rulebook import entry as rule_of
from guidebuild.build.tell import finding
from guidebuild.guide.guide import Guide
from guidebuild.guide.step import Step
from guidebuild.proof.hit import Hit
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Finding
from guidebuild.source.span import Span
from guidebuild.translate.catalogue.match import matched, renamed
from guidebuild.translate.po.entry import Entry
from guidebuild.translate.segments.segment import Segment

_BLOCK = re.compile(
    r"^(?:`{3,}|~{3,})step[ \t]*\n(?P<body>.*?)^(?:`{3,}|~{3,})", re.MULTILINE | re.DOTALL
)
_OWN_ID = re.compile(r"^id[ \t]*:", re.MULTILINE)


def of_steps(
    guide: Guide,
    texts: Mapping[str, Sequence[Segment]],
    known: Mapping[str, Mapping[str, Sequence[Entry]]],
) -> Iterator[Finding]:
    """One finding a step, whatever the number of languages. `texts`: by file; `known`: entries by file, language."""
    steps = {(step.file or guide.path, step.id): step for step in guide.steps}
    found: dict[tuple[str, str, str], list[str]] = {}
    for file, languages in known.items():
        for language, entries in languages.items():
            for place, old in _names(texts[file], entries).items():
                found.setdefault((file, place, old), []).append(language)
    for (file, place, old), spoken in found.items():
        step = steps.get((file, place))
        edit = None if step is None else _edit(step, old)
        if step is not None and edit is not None:
            words = {"languages": ", ".join(f"`{one}`" for one in spoken), "old": old}
            yield finding(rule_of("step-renamed"), Hit(step.title.span, words, edits=(edit,)))


def _names(segments: Sequence[Segment], entries: Sequence[Entry]) -> dict[str, str]:
    return renamed(segments, entries, matched(segments, entries))


def _edit(step: Step, old: str) -> Edit | None:
    """`id: old` in the step's block, or in a new one; None where the author gave it an id: that is meant so."""
    source, text = step.body.source, step.body.source.text
    block = _BLOCK.search(text, step.body.start, step.body.end)
    if block is None:
        end = text.find("\n", step.title.span.end)
        at = len(text) if end < 0 else end
        return Edit(Span(source, at, at), f"\n\n```step\nid: {old}\n```")
    if _OWN_ID.search(block["body"]):
        return None
    return Edit(Span(source, block.start("body"), block.start("body")), f"id: {old}\n")
