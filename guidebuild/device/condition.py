"""A condition over options, as the author wrote it: `supplied = bare and not revision = a`."""

from dataclasses import dataclass, field
from typing import TypeAlias

from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Is:
    """The option has one of these values (`revision != a` is `Not(Is(...))`)."""

    option: str
    values: frozenset[str]
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True)
class Not:
    """The condition inside does not hold."""

    of: "Condition"


@dataclass(frozen=True, slots=True)
class Both:
    """All of them hold (`and`)."""

    of: tuple["Condition", ...]


@dataclass(frozen=True, slots=True)
class Either:
    """At least one holds (`or`)."""

    of: tuple["Condition", ...]


Condition: TypeAlias = Is | Not | Both | Either


def leaves(condition: Condition | None) -> tuple[Is, ...]:
    """Each comparison in a condition, in the order written."""
    match condition:
        case None:
            return ()
        case Is():
            return (condition,)
        case Not(of):
            return leaves(of)
        case Both(of) | Either(of):
            return tuple(leaf for part in of for leaf in leaves(part))
