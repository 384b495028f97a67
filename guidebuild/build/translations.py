"""A content folder in another language: its guides, records, kits and tools translated, and proved again."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from guidebuild.build.catalogues import read_catalogues, sources
from guidebuild.guide.content import Content, GuideRead
from guidebuild.proof.proof import Proof
from guidebuild.proof.prove import prove
from guidebuild.source.finding import Finding
from guidebuild.source.span import Span
from guidebuild.translate.catalogue.apply import (
    Stale,
    Translator,
    translated_device,
    translated_guide,
    translated_kit,
    translated_tools,
)
from guidebuild.translate.pseudo import is_pseudo, pseudo
from guidebuild.translate.segments.of_device import device_texts, kit_texts
from guidebuild.translate.segments.of_guide import guide_texts
from guidebuild.translate.segments.of_tools import tool_texts
from guidebuild.translate.segments.slots import Slots


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
        slots = Slots(lambda segment: pseudo(segment.text, language))
        return _proved(language, _pseudo(content, slots), paths, {}, ())
    read = read_catalogues(root, language, sources(content))
    translator = Translator(read.catalogues, content.settings.languages[0])
    guides = tuple(_guide(one, translator) for one in content.guides)
    told = replace(content, guides=guides, tools=translated_tools(content.tools, translator))
    return _proved(language, told, paths, translator.stale, read.findings)


def _guide(one: GuideRead, translator: Translator) -> GuideRead:
    device = translated_device(one.device, translator)
    guide = translated_guide(one.guide, translator)
    kits = tuple(replace(use, kit=translated_kit(use.kit, translator)) for use in guide.kits)
    options = {option.id: option for option in device.options}
    asked = tuple(options.get(option.id, option) for option in guide.options)
    return replace(one, device=device, guide=replace(guide, kits=kits, options=asked))


def _pseudo(content: Content, slots: Slots) -> Content:
    guides = []
    for one in content.guides:
        guide = guide_texts(one.guide, slots)
        kits = tuple(replace(use, kit=kit_texts(use.kit, slots)) for use in guide.kits)
        guides.append(
            replace(one, device=device_texts(one.device, slots), guide=replace(guide, kits=kits))
        )
    return replace(content, guides=tuple(guides), tools=tool_texts(content.tools, slots))


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
