"""A content folder in another language: its guides, records, kits and tools translated, and proved again."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from guidebuild.build.captions import captioned
from guidebuild.build.catalogues import read_catalogues, sources
from guidebuild.device.option import Option
from guidebuild.guide.content import Content, GuideRead
from guidebuild.proof.proof import Proof
from guidebuild.proof.prove import prove
from guidebuild.source.finding import Finding
from guidebuild.source.span import Span
from guidebuild.translate.captions.walk import caption_texts
from guidebuild.translate.catalogue.apply import Stale, Translator
from guidebuild.translate.pseudo import is_pseudo, pseudo
from guidebuild.translate.segments.of_device import device_texts, kit_texts
from guidebuild.translate.segments.of_guide import guide_texts
from guidebuild.translate.segments.of_tools import tool_texts
from guidebuild.translate.segments.remembering import Remembering
from guidebuild.translate.segments.segment import Segment
from guidebuild.translate.segments.slots import Slots, Translate
from guidebuild.translate.webvtt.writer import write_webvtt


@dataclass(frozen=True, slots=True)
class Translation:
    """Content and proofs in `language`; `stale`: what is not a fresh translation, by its place in the source."""

    language: str
    content: Content
    proofs: tuple[Proof, ...]
    stale: Mapping[Span, Stale] = field(default_factory=dict)
    findings: tuple[Finding, ...] = ()

    @property
    def paths(self) -> frozenset[str]:
        """The guides that it holds, by their content paths."""
        return frozenset(proof.guide.path for proof in self.proofs)


def translation(root: Path, content: Content, language: str, paths: Sequence[str]) -> Translation:
    """`content` as its readers of `language` get it; `paths`: the guides that are to be proved."""
    if is_pseudo(language):
        told = _told(content, lambda segment: pseudo(segment.text, language))
        return _proved(language, told, paths, {}, ())
    texts = sources(content)
    read = read_catalogues(root, language, texts)
    translator = Translator(read.catalogues, content.settings.languages[0])
    translator.learn([segment for some in texts.values() for segment in some])
    told = replace(_told(content, translator), captions=_captions(content, translator))
    return _proved(language, told, paths, translator.stale, read.findings)


def _told(content: Content, translate: Translate) -> Content:
    """The content with every text as `translate` gives it."""
    memory = Remembering(translate)
    slots = Slots(memory)
    devices = {id_: device_texts(one, slots) for id_, one in content.devices.items()}
    kits = {id_: kit_texts(one, slots) for id_, one in content.kits.items()}
    guides = tuple(_guide(one, slots, memory) for one in content.guides)
    tools = tool_texts(content.tools, slots)
    return replace(content, devices=devices, kits=kits, guides=guides, tools=tools)


def _captions(content: Content, translator: Translator) -> dict[str, str]:
    """A caption can't be marked as out of date: such a one stays in the source's words."""

    def fresh(segment: Segment) -> str | None:
        text = translator(segment)
        return None if segment.span in translator.stale else text

    return {
        one.film: write_webvtt(caption_texts(one.captions, one.source, Slots(fresh)))
        for one in captioned(content)
    }


def _guide(one: GuideRead, slots: Slots, memory: Remembering) -> GuideRead:
    device = device_texts(one.device, slots)
    guide = guide_texts(one.guide, slots)
    kits = tuple(replace(use, kit=kit_texts(use.kit, slots)) for use in guide.kits)
    options = tuple(_option(option, memory) for option in guide.options)
    return replace(one, device=device, guide=replace(guide, kits=kits, options=options))


def _option(option: Option, memory: Remembering) -> Option:
    """A question that a record or a kit asks is made of their words: translated there, it is so here."""
    values = tuple(replace(value, label=memory.again(value.label)) for value in option.values)
    return replace(option, ask=memory.again(option.ask), values=values)


def _proved(
    language: str,
    content: Content,
    paths: Sequence[str],
    stale: Mapping[Span, Stale],
    findings: tuple[Finding, ...],
) -> Translation:
    """A proof takes a fraction of a millisecond: made anew, it speaks of the translated values themselves."""
    chosen = [one for one in content.guides if one.guide.path in paths]
    proofs = tuple(prove(one.guide, one.device) for one in chosen)
    return Translation(language, content, proofs, stale, findings)
