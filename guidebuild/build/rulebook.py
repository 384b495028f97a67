"""Every rule, found by its file name: about a proof, about a translation, and the faults that the reader raises."""

import pkgutil
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from types import ModuleType
from typing import TYPE_CHECKING, Any

from guidebuild.reports.parts.report import Card
from guidebuild.source.finding import Category, Loudness
from guidebuild.source.nearest import nearest as nearest_word

if TYPE_CHECKING:  # slow to load, and a check that finds all in its cache needs none of them
    from guidebuild.guide.content import Content
    from guidebuild.proof.hit import Hit
    from guidebuild.proof.proof import Proof

ROOMS = ("guidebuild.rules", "guidebuild.read.faults", "guidebuild.translate.checks")
Hits = Iterable["Hit"]


@dataclass(frozen=True, slots=True)
class Entry:
    """A rule ready to run; a reading fault has no check, the reader raises it; one about a translation looks at
    a sentence and its translation, not at a proof (`check_pair`), or at captions.

    `check(proof)` looks at one guide, `check(proof, content)` also at the tools and words of the content. A rule
    about all guides together has `gather(content)`, which is asked of each guide alone and of all that is no
    guide, and `check_gathered(gathered)`: so no guide is read again for another's sake.
    """

    name: str
    category: Category
    loudness: Loudness | None
    message: str
    help: str
    check: Callable[..., Hits] | None
    gather: Callable[["Content"], Any] | None
    check_gathered: Callable[[Sequence[Any]], Hits] | None
    of_content: bool = False  # `check` has the second parameter

    def hits(self, proof: "Proof", content: "Content") -> Hits:
        """What the rule says of one guide."""
        if self.check is None:
            return ()
        return self.check(proof, content) if self.of_content else self.check(proof)

    def gathered(self, content: "Content") -> Any:
        """What the rule wants to know of this much of the content."""
        return self.gather(content) if self.gather else None

    def over_all(self, gathered: Sequence[Any]) -> Hits:
        """What the rule says of all guides together."""
        return self.check_gathered(gathered) if self.check_gathered else ()


@cache
def places() -> dict[str, str]:
    """Each rule's name and module, in order of the names; nothing is imported but the rooms."""
    found = {}
    for room in ROOMS:
        for module in pkgutil.iter_modules(import_module(room).__path__):
            if not module.ispkg and not module.name.startswith("_"):
                found[module.name.replace("_", "-")] = f"{room}.{module.name}"
    return dict(sorted(found.items()))


def names() -> tuple[str, ...]:
    """All names, in order."""
    return tuple(places())


def names_of_rules() -> tuple[str, ...]:
    """Those that look at a guide and its proof, in order; the others have no check of a guide."""
    return tuple(name for name, place in places().items() if place.startswith(f"{ROOMS[0]}."))


@cache
def entry(name: str) -> Entry:
    """The rule of this name; KeyError where there is none."""
    module = import_module(places()[name])
    check = getattr(module, "check", None)
    return Entry(
        name=name,
        category=module.RULE.category,
        loudness=module.RULE.loudness,
        message=module.MESSAGE,
        help=module.HELP,
        check=check,
        gather=getattr(module, "gather", None),
        check_gathered=getattr(module, "check_gathered", None),
        of_content=check is not None and check.__code__.co_argcount > 1,
    )


def nearest(name: str) -> str:
    """The rule whose name is most like this one, or an empty string."""
    return nearest_word(name, names()) or ""


def entries() -> Iterator[Entry]:
    """All rules, in order of their names."""
    return map(entry, names())


@cache
def card(name: str) -> Card:
    """What the rule of this name says of itself; KeyError where there is none."""
    rule = entry(name)
    summary, why, source = _told(import_module(places()[name]))
    return Card(name, rule.category, summary, why, source, rule.message, rule.help)


def _told(module: ModuleType) -> tuple[str, str, str]:
    """The docstring's first line, its paragraphs, and what it names as its source."""
    paragraphs = [part.strip() for part in (module.__doc__ or "").strip().split("\n\n")]
    sources = [part for part in paragraphs[1:] if part.startswith("Source")]
    why = [part for part in paragraphs[1:] if part not in sources]
    return " ".join(paragraphs[0].split()), "\n\n".join(why), "\n\n".join(sources)
