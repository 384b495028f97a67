"""Records, kits and tools in every language of the settings, and languages of which nothing is there."""

from collections.abc import Iterator
from pathlib import Path

from guidebuild.build.languages.catalogue import MISSING, checked, opened
from guidebuild.build.languages.wanted import silent, spoken
from guidebuild.build.rulebook import entry as rule_of
from guidebuild.build.tell import finding
from guidebuild.device.kit import Kit
from guidebuild.device.record import Device
from guidebuild.guide.content import Content
from guidebuild.proof.hit import Hit
from guidebuild.source.finding import Finding
from guidebuild.translate.checks import text_missing
from guidebuild.translate.segments.of_tools import tool_segments
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.segments.take import segments


def of_rest(content: Content) -> Iterator[Finding]:
    """What the rules about translations say of all that no guide is; a file without a catalogue says nothing here."""
    for language, span in silent(content):
        words = text_missing.of_all("this content folder", language)
        yield finding(rule_of(MISSING), Hit(span, words))
    texts = _texts(content)
    for language in spoken(content):
        for file, some in texts.items():
            one = opened(Path(content.root), file, language)
            if one is not None:
                yield from checked(one, some, content)


def _texts(content: Content) -> dict[str, tuple[Segment, ...]]:
    things: tuple[Device | Kit, ...] = (*content.devices.values(), *content.kits.values())
    every = (tool_segments(content.tools), *(segments(one) for one in things))
    return {some[0].file: some for some in every if some}
