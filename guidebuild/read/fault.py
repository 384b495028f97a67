"""A fault's words filled in: how every reader says that something is wrong."""

from typing import Protocol

from guidebuild.proof.hit import Rule
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Finding, Related
from guidebuild.source.span import Span


class Fault(Protocol):
    """A module of `faults/`: its file name is the rule's name."""

    __name__: str
    RULE: Rule
    MESSAGE: str
    HELP: str


def finding(
    fault: Fault,
    span: Span,
    edits: tuple[Edit, ...] = (),
    related: tuple[Related, ...] = (),
    **words: object,
) -> Finding:
    """The fault at a place; `words` fill its MESSAGE and HELP."""
    return Finding(
        rule=fault.__name__.rpartition(".")[2].replace("_", "-"),
        category=fault.RULE.category,
        span=span,
        message=fault.MESSAGE.format(**words),
        help=fault.HELP.format(**words),
        related=related,
        edits=edits,
    )
