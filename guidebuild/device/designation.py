"""Screws from the words on their bag: `M2.5x8 countersunk TX8`, `ISO 7046-2 M5 x 20`, `#4-40 x 1/4 in`.

Sources: ISO 965, ISO 1478, ISO 1501, ASME B1.1 for the forms of a thread; ISO 225 for where a length is
measured. After the diameter, a number that is a standard pitch of it is the pitch, any other the length.
"""

import re
from dataclasses import dataclass, replace
from decimal import Decimal

from guidebuild.device.screw import Screw
from guidebuild.device.standards import drive_of, head_of, split_standard
from guidebuild.device.threads import coarse, is_pitch
from guidebuild.device.vocabulary import next_word, pinned
from guidebuild.source.span import Span

_N = r"(\d+(?:[.,]\d+)?)"
_X = r"\s*[x×X*]\s*"
_LENGTH = r"(\d+[\s-]+\d+/\d+|\d+/\d+|\d+(?:[.,]\d+)?)"
_METRIC = re.compile(rf"(ST|M|S)\s?{_N}(?:{_X}{_N})?(?:{_X}{_N})?(?:\s*mm\b)?(?![\w./])")
_UNM = re.compile(rf"{_N}\s*UNM(?:{_X}{_N})?(?:\s*mm\b)?(?![\w./])")
_INCH = re.compile(
    rf"(?:#|No\.?\s?)?(\d{{1,2}}|\d+/\d+)\s*-\s*(\d{{2}})(?:\s*(?:UNC|UNF|UNEF|UN)(?:-\d[AB])?)?"
    rf"(?:{_X}{_LENGTH}(?:\s*(in\b|inch\b|\"|″|mm\b))?)?(?![\w./])"
)
_BETWEEN = re.compile(r"[\s,;()–-]*")
_INCH_MM = Decimal("25.4")


@dataclass(frozen=True, slots=True)
class _Size:
    """A thread with its length, and where the text after it begins."""

    thread: str
    diameter: Decimal
    pitch: Decimal | None
    length: Decimal | None
    end: int


def parse_screw(text: str, span: Span) -> Screw | None:
    """The screw that these words mean, or None where a word is not one of the trade's.

    `span` is the place of the words and stays with the screw. What the words leave open is None; a named
    product standard says the head.
    """
    standard, rest = split_standard(text.strip())
    size = _metric(rest) or _miniature_inch(rest) or _inch(rest)
    if size is None:
        return None
    screw = Screw(
        text, size.thread, size.diameter, size.pitch, size.length, standard=standard, span=span
    )
    screw = replace(screw, head=head_of(standard, size.thread))
    return _with_words(screw, rest[size.end :])


def _with_words(screw: Screw, rest: str) -> Screw | None:
    recess = None
    while rest := _BETWEEN.sub("", rest, count=1):
        found = next_word(rest)
        if found is None:
            return None
        word, length = found
        rest = rest[length:]
        match word.means:
            case "head":
                screw = replace(screw, head=word.value)
            case "drive":
                screw = replace(screw, drive=word.value)
            case "strength":
                screw = replace(screw, strength=word.value)
            case "locking":
                screw = replace(screw, locking=word.value)
            case "captive":
                screw = replace(screw, captive=True)
            case "pin":
                screw = replace(screw, drive=pinned(screw.drive))
            case "recess":
                recess = word.value
            case _:  # finish, end, class: they change nothing that a guide asks
                pass
    return replace(screw, drive=screw.drive or drive_of(screw, recess))


def _number(text: str) -> Decimal:
    return Decimal(text.replace(",", "."))


def _plain(number: Decimal) -> str:
    return f"{number.normalize():f}"


def _metric(text: str) -> _Size | None:
    found = _METRIC.match(text)
    if found is None:
        return None
    system, size = found[1], _plain(_number(found[2]))
    numbers = [_number(one) for one in found.group(3, 4) if one]
    usual = coarse(system, size)
    pitch = numbers.pop(0) if _first_is_pitch(system, size, numbers) else None
    if usual is not None:
        diameter = Decimal(size) if system == "ST" else usual.diameter
        own = "" if pitch in (None, usual.pitch) else f"x{_plain(pitch)}" if pitch else ""
        pitch = pitch or usual.pitch
    else:
        diameter, own = Decimal(size), f"x{_plain(pitch)}" if pitch else ""
    if len(numbers) > 1 or (pitch is not None and pitch >= diameter):
        return None
    return _Size(system + size + own, diameter, pitch, numbers[0] if numbers else None, found.end())


def _first_is_pitch(system: str, size: str, numbers: list[Decimal]) -> bool:
    return len(numbers) == 2 or (len(numbers) == 1 and is_pitch(system, size, numbers[0]))


def _miniature_inch(text: str) -> _Size | None:
    found = _UNM.match(text)
    if found is None:
        return None
    size = _number(found[1])
    known = coarse("UNM", _plain(size))
    length = _number(found[2]) if found[2] else None
    return _Size(f"{size:.2f} UNM", size, known.pitch if known else None, length, found.end())


def _inch(text: str) -> _Size | None:
    found = _INCH.match(text)
    if found is None:
        return None
    known = coarse("UN", f"{found[1]}-{found[2]}")
    if known is None:
        return None
    thread = ("" if "/" in found[1] else "#") + f"{found[1]}-{found[2]}"
    length = None
    if found[3]:
        length = _inches(found[3]) if found[4] != "mm" else _number(found[3])
    return _Size(thread, known.diameter, known.pitch, length, found.end())


def _inches(text: str) -> Decimal:
    """`1/4`, `1 1/2`, `1-1/2`, `0.25` inch in mm."""
    total = Decimal(0)
    for part in re.split(r"[\s-]+", text):
        above, _, below = part.partition("/")
        total += _number(above) / Decimal(below or 1)
    return total * _INCH_MM
