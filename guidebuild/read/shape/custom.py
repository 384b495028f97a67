"""Values of more than one node whose form a schema names: places on a picture, cases, bare words for maps."""

from collections.abc import Callable
from decimal import Decimal
from typing import Any, TypeAlias

from yaml.nodes import ScalarNode, SequenceNode

from guidebuild.device.things import Case
from guidebuild.read.shape.entry import LOST, Entry
from guidebuild.read.shape.reading import Reading
from guidebuild.read.shape.scalars import number
from guidebuild.read.shape.schema import Schema
from guidebuild.read.shape.words import refuse
from guidebuild.source.said import Said

Reader: TypeAlias = Callable[[Any, Reading], Any]
Place: TypeAlias = tuple[Decimal, Decimal]


def place(node: Any, reading: Reading) -> Place | None:
    """`[16, 30]`."""
    if type(node) is not SequenceNode or len(node.value) != 2:
        return None
    if not all(type(one) is ScalarNode for one in node.value):
        return None
    across, down = (number(one, reading) for one in node.value)
    return None if across is None or down is None else (across, down)


def places(node: Any, reading: Reading) -> tuple[Place, ...] | None:
    """One place or a list of them."""
    single = place(node, reading)
    return (single,) if single is not None else _all(node, reading, place, 1)


def areas(node: Any, reading: Reading) -> tuple[tuple[Place, Place], ...] | None:
    """Two corners, or a list of such pairs."""
    single = _corners(node, reading)
    return (single,) if single is not None else _all(node, reading, _corners, 1)


def arrows(node: Any, reading: Reading) -> tuple[tuple[Place, ...], ...] | None:
    """Two or more places, or a list of such lines."""
    single = _line(node, reading)
    return (single,) if single is not None else _all(node, reading, _line, 1)


def _corners(node: Any, reading: Reading) -> Any:
    line = _line(node, reading)
    return line if line is not None and len(line) == 2 else None


def _line(node: Any, reading: Reading) -> Any:
    return _all(node, reading, place, 2)


def _all(node: Any, reading: Reading, read: Reader, least: int) -> Any:
    """Each item of a list, or None where it is no list or one is not of this form."""
    if type(node) is not SequenceNode or len(node.value) < least:
        return None
    found = tuple(read(one, reading) for one in node.value[:10_000])
    return None if None in found else found


CUSTOM: dict[str, Reader] = {"place": place, "places": places, "areas": areas, "arrows": arrows}


def reader(name: str, schema: Schema) -> Reader:
    """The custom form of this name; what is not of it is refused in the schema's words."""
    read = CUSTOM[name]

    def custom(node: Any, reading: Reading) -> Any:
        value = read(node, reading)
        return refuse(node, reading, schema) if value is None else value

    return custom


def cases(read: Reader) -> Reader:
    """A value, or a list of which the first that holds counts: always a tuple of Case."""

    def all_cases(node: Any, reading: Reading) -> Any:
        value = read(node, reading)
        if value is LOST:
            return LOST
        if type(node) is not SequenceNode:
            return (Case(value, None, reading.span(node)),)
        pairs = zip(value, node.value, strict=False)
        return tuple(_case(one, of, reading) for one, of in pairs if "is" in _keys(one))

    return all_cases


def _keys(value: Any) -> Any:
    return value.values if isinstance(value, Entry) else ("is",)


def _case(value: Any, node: Any, reading: Reading) -> Case[Any]:
    if isinstance(value, Entry):
        return Case(value.values["is"], value.get("when", None), value.span)
    return Case(value, None, reading.span(node))


def short(key: str, read: Reader) -> Reader:
    """A bare value read as the map with this one key."""

    def expand(node: Any, reading: Reading) -> Any:
        value = read(node, reading)
        if value is LOST or isinstance(value, Entry):
            return value
        span = reading.span(node)
        entry = Entry(span)
        if value is not None:
            entry.marks[key], entry.values[key] = Said(key, span), value
        return entry

    return expand
