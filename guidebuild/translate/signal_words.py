"""The four signal words in each language, from one table with a source for each row.

No multilingual table of ISO 3864-2 or ANSI Z535 has been read: only the English row is confirmed.
"""

import csv
from collections.abc import Mapping
from functools import cache
from importlib import resources

LEVELS = ("danger", "warning", "caution", "notice")


@cache
def _rows() -> dict[str, dict[str, str]]:
    text = resources.files(__package__).joinpath("signal_words.csv").read_text(encoding="utf-8")
    return {row["language"]: row for row in csv.DictReader(text.splitlines())}


def signal_words(language: str) -> Mapping[str, str]:
    """Level -> word in a language tag's language; in English where the table has no row for it."""
    row = _row(language)
    return {level: row[level] for level in LEVELS}


def confirmed(language: str) -> bool:
    """Whether the words were read in the standard, or in a text that restates it."""
    return _row(language)["status"] == "confirmed"


def languages() -> tuple[str, ...]:
    """The languages that have words of their own."""
    return tuple(_rows())


def _row(language: str) -> dict[str, str]:
    rows = _rows()
    parts = language.split("-")
    tags = ["-".join(parts[:length]) for length in range(len(parts), 0, -1)]
    return next((rows[tag] for tag in tags if tag in rows), rows["en"])
