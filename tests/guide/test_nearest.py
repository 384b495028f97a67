"""What an author is told to write instead of a word that is none, and when that is sure enough to go on."""

import re

import pytest

from guidebuild.shipped import shipped
from guidebuild.source.bench_words import BENCH_WORDS
from guidebuild.source.nearest import meant, nearest

RECORD = ("parts", "fasteners", "connectors", "joints", "stores", "functions", "hazards")
PART_ACTS = ("lift", "lower", "remove", "offer", "refit", "exchange", "renew", "add")


@pytest.mark.parametrize(
    ("word", "among", "told", "taken"),
    [
        ("screws", RECORD, "fasteners", "fasteners"),  # by letters it is nearest to `stores`
        ("Bolts", RECORD, "fasteners", "fasteners"),
        ("conectors", RECORD, "connectors", "connectors"),
        ("fit", PART_ACTS, "refit", "refit"),
        ("replace", PART_ACTS, "exchange", None),  # put back, or put a new one in: nobody knows
        ("left-screws", ("lift-screws", "left-screw"), "left-screw", None),
        ("front", ("frond", "frons"), "frons", None),
        ("zebra", RECORD, None, None),
    ],
)
def test_the_word_that_is_told_and_the_one_that_is_taken(
    word: str, among: tuple[str, ...], told: str | None, taken: str | None
) -> None:
    assert nearest(word, among) == told
    assert meant(word, among) == taken


def test_every_bench_word_leads_to_a_word_of_the_markup() -> None:
    folder = shipped("schema")
    schemas = [path.read_text(encoding="utf-8") for path in folder.rglob("*.schema.json")]
    known = set(re.findall(r'"([a-z-]+)"', "".join(schemas)))
    known |= {path.name.split(".")[0] for path in (folder / "blocks").iterdir()}
    assert {one for words in BENCH_WORDS.values() for one in words} <= known
