"""What was read, in lines that a person can compare with what was written: every word with its place."""

from collections.abc import Iterator, Mapping
from dataclasses import MISSING, Field, fields, is_dataclass
from decimal import Decimal
from enum import Enum
from typing import Any

from guidebuild.device.condition import Both, Either, Is, Not
from guidebuild.device.quantity import Quantity
from guidebuild.device.states import State
from guidebuild.guide.prose import Run
from guidebuild.source.said import Said
from guidebuild.source.span import Span


def told(value: Any, first: int = 1) -> str:
    """The value as lines; `first` is the line of the file that counts as line 1."""
    return "\n".join(_lines("", value, first))


def place(span: Span, first: int = 1) -> str:
    """`3:9-19`, or `3:9-4:2` over several lines."""
    line, column = span.source.position(span.start)
    last, end = span.source.position(span.end)
    after = f"{end}" if last == line else f"{last - first + 1}:{end}"
    return f"{line - first + 1}:{column}-{after}"


def _lines(name: str, value: Any, first: int) -> Iterator[str]:
    short = _short(value, first)
    head = f"{name}: " if name else ""
    if short is not None:
        yield head + short
    elif isinstance(value, tuple):
        if head:
            yield head.rstrip()
        for one in value:
            yield from _under(_item(one, first), bool(head))
    elif isinstance(value, Mapping):
        if head:
            yield head.rstrip()
        for key, one in value.items():
            yield from _under(_lines(str(key), one, first), bool(head))
    else:
        yield head + type(value).__name__
        for field in fields(value):
            inner = getattr(value, field.name)
            if _worth(field, inner):
                yield from _under(_lines(field.name.rstrip("_"), inner, first), True)


def _item(value: Any, first: int) -> Iterator[str]:
    lines = list(_lines("", value, first))
    yield "- " + lines[0]
    yield from ("  " + line for line in lines[1:])


def _under(lines: Iterator[str], deeper: bool) -> Iterator[str]:
    return ("  " + line if deeper else line for line in lines)


def _worth(field: "Field[Any]", value: Any) -> bool:
    """Spans stand with the words; what is as usual is not told."""
    if isinstance(value, Span) or (field.name == "file" and isinstance(value, str)):
        return False
    usual = field.default if field.default is not MISSING else None
    return value not in (usual, None, (), False, frozenset()) and value != {}


def _short(value: Any, first: int) -> str | None:
    """What goes on one line."""
    match value:
        case Said():
            return f"{value.text} ({place(value.span, first)})"
        case Run():
            more = " ".join([*sorted(value.marks), *([f"to {value.href}"] if value.href else [])])
            return f"{value.text!r} ({place(value.span, first)}){' ' + more if more else ''}"
        case Quantity():
            return f"{value.value} {value.unit} ({place(value.span, first)})"
        case Is():
            return f"{value.option} is {' or '.join(sorted(value.values))} ({place(value.span, first)})"
        case Not():
            return f"not [{_short(value.of, first)}]"
        case Both() | Either():
            word = " and " if isinstance(value, Both) else " or "
            return "[" + word.join(str(_short(one, first)) for one in value.of) + "]"
        case State() | Decimal() | str() | int():
            return str(value.name if isinstance(value, State) else value)
        case Enum():
            return str(value.value)
        case tuple() if value and all(isinstance(one, Said | Decimal) for one in value):
            return ", ".join(str(_short(one, first)) for one in value)
        case _ if not is_dataclass(value) and not isinstance(value, tuple | Mapping):
            return str(value)
        case _:
            return None
