"""A rule's hit in the author's words: templates filled, configurations told."""

from typing import TYPE_CHECKING

from guidebuild.build.rulebook import Entry
from guidebuild.proof.hit import Hit
from guidebuild.source.finding import Finding, Told

if TYPE_CHECKING:
    from guidebuild.guide.configurations import Configurations


def finding(rule: Entry, hit: Hit, configurations: "Configurations | None" = None) -> Finding:
    """The finding that a hit stands for; KeyError where a template asks for a word that the hit lacks."""
    return Finding(
        rule=rule.name,
        category=rule.category,
        span=hit.span,
        message=rule.message.format_map(hit.words),
        help=rule.help.format_map(hit.words),
        related=hit.related,
        told=_told(hit, configurations),
        edits=hit.edits,
    )


def _told(hit: Hit, configurations: "Configurations | None") -> Told | None:
    if hit.where is None or configurations is None:
        return None
    return configurations.tell(hit.where, hit.among)
