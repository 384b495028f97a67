"""One language's figures: separators, per cent sign, plural rules."""

import csv
from dataclasses import dataclass
from functools import cache
from importlib import resources


@dataclass(frozen=True, slots=True)
class Locale:
    """`percent` is a pattern whose figures stand at `#,##0`; `plurals` maps a category to its rule."""

    language: str
    decimal: str
    group: str
    digits: str
    percent: str
    plurals: tuple[tuple[str, str], ...]


@cache
def _table() -> dict[str, Locale]:
    text = resources.files(__package__).joinpath("locales.csv").read_text(encoding="utf-8")
    return {row["language"]: _locale(row) for row in csv.DictReader(text.splitlines())}


def _locale(row: dict[str, str]) -> Locale:
    rules = [rule.partition(": ") for rule in row["plurals"].split("; ") if rule]
    plurals = tuple((name, rule) for name, _, rule in rules)
    return Locale(
        row["language"], row["decimal"], row["group"], row["digits"], row["percent"], plurals
    )


def locale(language: str) -> Locale:
    """The data of a language tag: of the tag itself, else of its shorter forms, else of English."""
    parts = language.split("-")
    for length in range(len(parts), 0, -1):
        found = _table().get("-".join(parts[:length]))
        if found is not None:
            return found
    return _table()["en"]


def languages() -> tuple[str, ...]:
    """The languages that the extract holds."""
    return tuple(_table())
