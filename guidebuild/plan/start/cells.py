"""What stands in a cell of the strip-down sheet: a count, a screw, a torque, a size, a hazard."""

import re
from collections.abc import Mapping
from dataclasses import dataclass

from guidebuild.device.designation import parse_screw
from guidebuild.device.units import amount, parse_quantity
from guidebuild.source.span import Span
from guidebuild.source.text import Source

LEVELS = ("danger", "warning", "caution", "notice")
TORQUE_WORDS = ("", "not-known", "by-hand")
_SIZE = re.compile(r"(\d+(?:[.,]\d+)?) ?[x×] ?(\d+(?:[.,]\d+)?)(?: ?mm)?")


@dataclass(frozen=True, slots=True)
class Danger:
    """A hazard as it was written down: the signal word, the hazard, what happens, how to avoid it."""

    level: str
    words: str
    result: str
    avoid: str


@dataclass(frozen=True, slots=True)
class Wrong:
    """A cell that can't be read: its column, and what to write there."""

    column: str
    words: str


def count(cells: Mapping[str, str]) -> int | Wrong:
    """How many; one where nothing is said."""
    text = cells.get("count", "") or "1"
    if not (text.isascii() and text.isdigit() and 0 < int(text) < 1000):
        return Wrong("count", f"`{text}` is no count; write a whole number")
    return int(text)


def screw(cells: Mapping[str, str]) -> str | Wrong:
    """A screw's designation, as it stands there."""
    text = cells.get("screw", "")
    if text and parse_screw(text, Span(Source("strip", text), 0, len(text))) is None:
        return Wrong("screw", f"`{text}` is no screw; write it as `M2.5x8 pan TX8`")
    return text


def torque(cells: Mapping[str, str]) -> str | Wrong:
    """As a record has it: a figure with its unit as it was written, `not-known`, `by-hand`."""
    text = cells.get("torque", "")
    plain = text.lower().replace(" ", "-")
    if plain in TORQUE_WORDS:
        return plain or "not-known"
    found = parse_quantity(text, Span(Source("strip", text), 0, len(text)))
    if found is None or amount(found, "torque") is None or found.value <= 0:
        return Wrong(
            "torque", f"`{text}` is no torque; write it as `2.0 N·m`, or `not known`, or `by hand`"
        )
    return text


def size(cells: Mapping[str, str]) -> tuple[float, float] | Wrong | None:
    """Width and height in mm, as the part is seen from the side."""
    text = cells.get("size", "")
    if not text:
        return None
    found = _SIZE.fullmatch(text)
    sides = tuple(float(one.replace(",", ".")) for one in found.groups()) if found else ()
    if len(sides) != 2 or not all(0 < one <= 5000 for one in sides):
        return Wrong("size", f"`{text}` is no size; write width x height in mm, as `60x25`")
    return sides[0], sides[1]


def danger(cells: Mapping[str, str]) -> Danger | Wrong | None:
    """`warning: The spring pushes. / It can hit your face. / Let it go first.`"""
    text = " ".join(cells.get("hazard", "").split())
    if not text:
        return None
    level, colon, said = text.partition(":")
    words = [one.strip() for one in said.split(" / ")]
    if level.lower() not in LEVELS or not colon or len(words) != 3 or not all(words):
        return Wrong(
            "hazard",
            "write a signal word (danger, warning, caution, notice), then three sentences with ` / ` between: "
            "`warning: The spring pushes. / It can hit your face. / Let it go first.`",
        )
    return Danger(level.lower(), *words)
