"""The content in one language, and how a page leads to the same page in the others."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field

from guidebuild.guide.content import Content
from guidebuild.proof.proof import Proof
from guidebuild.source.span import Span
from guidebuild.translate.catalogue.apply import Stale
from guidebuild.translate.messages.sayer import Sayer


@dataclass(frozen=True, slots=True)
class Edition:
    """`stale`: what is not a fresh translation, by its place in the source."""

    language: str
    content: Content
    proofs: tuple[Proof, ...]
    stale: Mapping[Span, Stale] = field(default_factory=dict)

    @property
    def paths(self) -> frozenset[str]:
        """The guides that it holds, by their content paths."""
        return frozenset(proof.guide.path for proof in self.proofs)


@dataclass(frozen=True, slots=True)
class Tongue:
    """A language in the rail: its name in itself, and the page in it (site path)."""

    tag: str
    name: str
    direction: str
    page: str
    here: bool


def tongues(languages: Sequence[str], here: str, page: Callable[[str], str]) -> tuple[Tongue, ...]:
    """All languages of a page; none where there is only one."""
    if len(languages) < 2:
        return ()
    return tuple(_tongue(one, here, page(one)) for one in languages)


def _tongue(tag: str, here: str, page: str) -> Tongue:
    say = Sayer(tag)
    return Tongue(tag, say.name, say.direction, page, tag == here)
