"""What an output makes of some guides, so that a site may be made in parts."""

from collections.abc import Callable, Collection, Container, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, TypeAlias

# language -> what its lists say of each guide, in order; the authors' own language first
Listed: TypeAlias = Mapping[str, Sequence[Any]]

# Of a language and its guides here: the content paths of all guides that the whole site has in it.
Elsewhere: TypeAlias = Callable[[str, Container[str]], Container[str]]


@dataclass(frozen=True, slots=True)
class Made:
    """`files`: site path -> bytes. `guides`: the content paths of those that `listed` speaks of, in its order.

    `own`: content path of a guide -> the site paths that are made of it.
    """

    files: Mapping[str, bytes]
    listed: Listed
    guides: Mapping[str, Sequence[str]] = field(default_factory=dict)
    own: Mapping[str, Collection[str]] = field(default_factory=dict)


def nowhere(language: str, here: Container[str]) -> Container[str]:
    """A site that is made at once has no guides but these."""
    return here
