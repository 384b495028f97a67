"""The closed vocabulary of screws: heads, drives and the other words of a designation.

Each word of the trade leads to one normal word: `csk` and `flat head` to `countersunk`, `Torx 8` and `T8` to
`TX8`. The tables in `data/` say from which standard a word is.
"""

import re
from dataclasses import dataclass
from functools import cache

from guidebuild.device.tables import rows

_BLADE = r"\d+(?:[.,]\d+)?(?:\s*[x×]\s*\d+(?:[.,]\d+)?)?"
_SIZE = {"number": r"\d+", "mm": r"\d+(?:[.,]\d+)?", "blade": _BLADE, "none": r"(?!)"}


@dataclass(frozen=True, slots=True)
class Head:
    """`overall`: the length of a screw with this head includes the head (ISO 225)."""

    word: str
    shape: str
    overall: bool
    source: str


@dataclass(frozen=True, slots=True)
class Drive:
    """`sizes` is empty where there is no closed list; `unit` is number, mm, blade or none."""

    word: str
    sizes: tuple[str, ...]
    unit: str
    source: str

    def of_size(self, size: str | None) -> str:
        """The normal form with a size: `TX8`, `hex 2.5`; of a bare word the word."""
        return self.word + ("" if self.word.isupper() else " ") + size if size else self.word


@cache
def heads() -> dict[str, Head]:
    """Heads by their normal word."""
    return {
        row["head"]: Head(row["head"], row["shape"], row["length"] == "overall", row["source"])
        for row in rows("heads")
    }


@cache
def drives() -> dict[str, Drive]:
    """Drives by their normal word."""
    return {
        row["drive"]: Drive(
            row["drive"],
            tuple(filter(None, row["sizes"].split("|"))),
            row["unit"],
            row["source"],
        )
        for row in rows("drives")
    }


@dataclass(frozen=True, slots=True)
class Word:
    """What one word or phrase says: `means` is head, drive, strength, locking, captive, ... or `finish`."""

    means: str
    value: str


@cache
def _phrases() -> tuple[tuple[str, str, str, str], ...]:
    """Every phrase with the pattern of a size behind it, the longest first, so that `pan with collar` beats `pan`."""
    found = [(row["word"], "", row["means"], row["value"]) for row in rows("screw_words")]
    for row in rows("heads"):
        found += [(one, "", "head", row["head"]) for one in row["spellings"].split("|")]
    for row in rows("drives"):
        size = rf"(?:\s*-?\s*(?P<size>{_SIZE[row['unit']]})(?:\s*mm)?)?"
        found += [(one, size, "drive", row["drive"]) for one in row["spellings"].split("|")]
    found.sort(key=lambda one: (-len(one[0]), one[0]))
    return tuple(found)


@cache  # made when a text begins like the phrase: all of them together cost more than a guide
def _pattern(phrase: str, size: str) -> re.Pattern[str]:
    spelled = r"[\s-]+".join(re.escape(part) for part in re.split(r"\s+", phrase))
    flags = re.IGNORECASE if len(phrase) > 2 or size else 0
    return re.compile(rf"{spelled}{size}(?![\w.])", flags)


def next_word(text: str) -> tuple[Word, int] | None:
    """What the text begins with, and how long that is; None where no known word begins it."""
    first = text[:1].casefold()
    for phrase, size_behind, means, value in _phrases():
        if phrase[0].casefold() != first:
            continue
        found = _pattern(phrase, size_behind).match(text)
        if found is None or (means == "drive" and not _known_size(value, found["size"])):
            continue
        if means == "drive":
            size = re.sub(r"\s", "", found["size"] or "").replace(",", ".").replace("×", "x")
            return Word(means, drives()[value].of_size(size)), found.end()
        return Word(means, value), found.end()
    return None


def pinned(drive: str | None) -> str | None:
    """The drive with a pin in its middle: `TX10` becomes `TR10`; others have no such form."""
    if drive is None:
        return None
    return re.sub(r"^TX(?=\d|$)", "TR", re.sub(r"^hex(?= |$)", "hex-pin", drive))


def _known_size(drive: str, size: str | None) -> bool:
    """Whether the drive exists in that size; a size of another list (`PH9`) is no word of ours."""
    sizes = drives()[drive].sizes
    return size is None or not sizes or size.replace(",", ".") in sizes
