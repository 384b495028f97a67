"""The word lists of a language; a language without lists has none, and the rules are silent for it."""

import csv
from dataclasses import dataclass
from functools import cache
from importlib import resources
from importlib.resources.abc import Traversable


@dataclass(frozen=True, slots=True, eq=False)  # one object a language: told apart by identity
class Lists:
    """`verbs`: what hands do, in the imperative. `plain`: words to avoid -> what to say. `same`: verb classes.

    `same` maps a verb in words (`take out`) to the act's verb as authors write it (`remove`).
    """

    verbs: frozenset[str]
    plain: dict[str, str]
    same: dict[str, frozenset[str]]
    vague: tuple[str, ...]
    small: frozenset[str]


def lists(language: str) -> Lists | None:
    """The lists of a language tag (`en-GB` has those of `en`), or None."""
    return _lists(language.split("-")[0])


@cache
def _lists(language: str) -> Lists | None:
    folder = resources.files(__package__).joinpath(language)
    if not folder.is_dir():
        return None
    same: dict[str, set[str]] = {}
    for row in _rows(folder, "acts.csv"):
        same.setdefault(row["say"], set()).add(row["act"])
    return Lists(
        verbs=frozenset(_lines(folder, "verbs.txt")),
        plain={row["avoid"]: row["say"] for row in _rows(folder, "plain.csv")},
        same={phrase: frozenset(acts) for phrase, acts in same.items()},
        vague=tuple(_lines(folder, "vague.txt")),
        small=frozenset(_lines(folder, "small.txt")),
    )


def _lines(folder: Traversable, name: str) -> list[str]:
    text = folder.joinpath(name).read_text(encoding="utf-8")
    return [line.strip() for line in text.splitlines() if line.strip() and not line.startswith("#")]


def _rows(folder: Traversable, name: str) -> list[dict[str, str]]:
    text = folder.joinpath(name).read_text(encoding="utf-8")
    return list(csv.DictReader(line for line in text.splitlines() if not line.startswith("#")))
