"""How each single value is read: one function for each word that `x-reads` may have in a schema."""

import re
from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from functools import lru_cache
from typing import Any, TypeAlias

from guidebuild.device.condition import Condition
from guidebuild.device.designation import parse_screw
from guidebuild.device.quantity import Quantity
from guidebuild.device.screw import Screw
from guidebuild.device.things import Torque
from guidebuild.device.units import parse_quantity, parse_seconds
from guidebuild.read.condition import Unreadable, parse
from guidebuild.read.faults import condition_not_readable
from guidebuild.read.shape.entry import LOST, Lost
from guidebuild.read.shape.reading import Reading
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source

Scalar: TypeAlias = Callable[[Any, Reading], Any]  # a node that is a scalar; None: not of this form

_NUMBER = re.compile(r"-?[0-9]{1,15}(\.[0-9]{1,15})?")
_WHOLE = re.compile(r"[0-9]{1,6}")


def text(node: Any, reading: Reading) -> Said | None:
    """A sentence or a name; never empty."""
    value = node.value.strip() if node.style in ("|", ">") else node.value
    return Said(value, reading.span(node)) if value else None


def number(node: Any, reading: Reading) -> Decimal | None:
    """`70`, `2.5`, `-5`."""
    return Decimal(node.value) if _NUMBER.fullmatch(node.value) else None


def whole(node: Any, reading: Reading) -> int | None:
    """`2`."""
    return int(node.value) if _WHOLE.fullmatch(node.value) else None


def people(node: Any, reading: Reading) -> int | None:
    """`1`, or `none`."""
    return 0 if node.value == "none" else whole(node, reading)


def flag(node: Any, reading: Reading) -> bool | None:
    """`true` or `false`."""
    return {"true": True, "false": False}.get(node.value)


def quantity(node: Any, reading: Reading) -> Quantity | None:
    """`7 mm`; the unit may be missing or unknown, which other rules speak about."""
    return parse_quantity(node.value, reading.span(node))


def time(node: Any, reading: Reading) -> Quantity | None:
    """`90 s`, `5 min`, `2m10s`: always in seconds."""
    seconds = parse_seconds(node.value)
    return None if seconds is None else Quantity(seconds, "s", reading.span(node))


def interval(node: Any, reading: Reading) -> tuple[Decimal, Decimal] | None:
    """`2m10s to 3m05s`, in seconds."""
    first, _, last = node.value.partition(" to ")
    start, end = parse_seconds(first), parse_seconds(last)
    return None if start is None or end is None or end < start else (start, end)


def screw(node: Any, reading: Reading) -> Screw | None:
    """`M2.5x8 countersunk TX8`."""
    found = _screw(node.value, reading.span(node).source)
    return None if found is None else replace(found, span=reading.span(node))


@lru_cache(maxsize=512)
def _screw(text: str, source: Source) -> Screw | None:
    """The same screw stands in a record many times; its words are taken apart once."""
    return parse_screw(text, Span(source, 0, 0))


def torque(node: Any, reading: Reading) -> Torque | None:
    """`0.30 N·m`, `by-hand`, `not-known`."""
    if node.value in ("by-hand", "not-known"):
        return Torque(None, node.value)
    figure = quantity(node, reading)
    return Torque(figure, None) if figure is not None and figure.value >= 0 else None


def condition(node: Any, reading: Reading) -> Condition | Lost | None:
    """`revision = b and not supplied = bare`, each comparison with its place."""
    if not node.value:
        return None
    span = reading.span(node)
    try:
        return parse(node.value, span, _offset(node, span))
    except Unreadable as problem:
        at = _inside(span, _offset(node, span), problem.start, problem.end)
        reading.report.tell(condition_not_readable, at, problem=problem.words)
        return LOST


def _offset(node: Any, span: Span) -> int | None:
    """Where the value's first character stands in the file; None where it is folded or escaped."""
    start = span.start + (1 if node.style else 0)
    here = span.source.text[start : start + len(node.value)]
    return start if here == node.value else None


def _inside(span: Span, offset: int | None, start: int, end: int) -> Span:
    return span if offset is None else Span(span.source, offset + start, offset + end)


SCALARS: dict[str, Scalar] = {
    "text": text,
    "id": text,  # its form is the schema's `pattern`
    "number": number,
    "whole": whole,
    "people": people,
    "flag": flag,
    "quantity": quantity,
    "time": time,
    "interval": interval,
    "screw": screw,
    "torque": torque,
    "condition": condition,
}
