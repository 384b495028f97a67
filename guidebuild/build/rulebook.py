"""Every rule, found by its file name: those that read a proof, and the faults that the reader raises."""

import pkgutil
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from inspect import signature
from types import ModuleType
from typing import Any

from guidebuild.proof.hit import Hit
from guidebuild.proof.proof import Proof
from guidebuild.reports.parts.report import Card
from guidebuild.source.finding import Category

ROOMS = ("guidebuild.rules", "guidebuild.read.faults")


@dataclass(frozen=True, slots=True)
class Entry:
    """A rule ready to run; of a reading fault both checks are None, the reader raises it.

    `check(proof)` looks at one guide; `check(proof, content)` at what the content says beside it (tools, words),
    `check_content(content)` at all guides together.
    """

    name: str
    category: Category
    message: str
    help: str
    check: Callable[..., Iterable[Hit]] | None
    check_content: Callable[[Any], Iterable[Hit]] | None

    def hits(self, proof: Proof, content: Any) -> Iterable[Hit]:
        """What the rule says of one guide."""
        if self.check is None:
            return ()
        return self.check(proof, content) if _takes_content(self.check) else self.check(proof)


@cache
def _takes_content(check: Callable[..., Iterable[Hit]]) -> bool:
    """Whether it has a second parameter."""
    return len(signature(check).parameters) > 1


@cache
def places() -> dict[str, str]:
    """Each rule's name and module, in order of the names; nothing is imported but the two rooms."""
    found = {}
    for room in ROOMS:
        for module in pkgutil.iter_modules(import_module(room).__path__):
            if not module.ispkg and not module.name.startswith("_"):
                found[module.name.replace("_", "-")] = f"{room}.{module.name}"
    return dict(sorted(found.items()))


def names() -> tuple[str, ...]:
    """All names, in order."""
    return tuple(places())


@cache
def entry(name: str) -> Entry:
    """The rule of this name; KeyError where there is none."""
    module = import_module(places()[name])
    return Entry(
        name=name,
        category=module.RULE.category,
        message=module.MESSAGE,
        help=module.HELP,
        check=getattr(module, "check", None),
        check_content=getattr(module, "check_content", None),
    )


def nearest(name: str) -> str:
    """The rule whose name is most like this one, or an empty string."""
    from difflib import get_close_matches  # only where somebody misspelt: it is slow to import

    return next(iter(get_close_matches(name, names(), n=1, cutoff=0.5)), "")


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
