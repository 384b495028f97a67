"""A schema compiled, once, to a closure that reads a YAML node and tells what is wrong with it."""

import re
from collections.abc import Callable
from functools import cache
from typing import Any, TypeAlias

from yaml.nodes import MappingNode, ScalarNode, SequenceNode

from guidebuild.read.faults import unknown_value
from guidebuild.read.shape import custom
from guidebuild.read.shape.entry import LOST
from guidebuild.read.shape.maps import map_reader
from guidebuild.read.shape.reading import TRAPPED, Reading
from guidebuild.read.shape.scalars import SCALARS
from guidebuild.read.shape.schema import Schema, document, follow
from guidebuild.read.shape.words import refuse, says
from guidebuild.source.nearest import meant
from guidebuild.source.respelt import respelt
from guidebuild.source.said import Said

Reader: TypeAlias = Callable[[Any, Reading], Any]  # (node, reading) -> value or LOST


@cache
def reader(name: str) -> Reader:
    """The reader of a whole document: `device`, `kit`, `blocks/part`."""
    return compiled(document(name), name)


def compiled(schema: Schema, inside: str) -> Reader:
    """The reader for a schema that stands in the document `inside`."""
    while "$ref" in schema:
        schema, inside = follow(schema["$ref"], inside)
    return _listed(schema, _short(schema, _bare(schema, inside)))


def _bare(schema: Schema, inside: str) -> Reader:
    reads = schema.get("x-reads")
    if reads in custom.CUSTOM:
        return custom.reader(reads, schema)
    if reads == "cases":
        return custom.cases(_any(schema["anyOf"], inside, schema))
    if reads in SCALARS:
        return _scalar(schema)
    if "enum" in schema or "const" in schema:
        said = schema.get("enum", [schema.get("const")])
        return _word(tuple(one for one in said if isinstance(one, str)))
    if "anyOf" in schema and "properties" not in schema:
        return _any(schema["anyOf"], inside, schema)
    if schema.get("type") == "array":
        return _list(schema, inside)
    if schema.get("type") == "null":
        return lambda node, reading: None
    return map_reader(schema, inside, compiled)


def _scalar(schema: Schema) -> Reader:
    read = SCALARS[schema["x-reads"]]
    pattern = re.compile(schema["pattern"]) if "pattern" in schema else None

    def scalar(node: Any, reading: Reading) -> Any:
        if type(node) is not ScalarNode:
            return refuse(node, reading, schema)
        value = read(node, reading)
        if value is None:
            return refuse(node, reading, schema)
        if pattern is not None and not pattern.search(node.value):
            return refuse(node, reading, schema)
        return value

    return scalar


def _word(words: tuple[str, ...]) -> Reader:
    """One of a closed list of words."""

    def word(node: Any, reading: Reading) -> Any:
        if type(node) is ScalarNode and node.style != TRAPPED:
            if node.value in words:
                return reading.said(node)
            value = reading.said(node)
            sure = meant(node.value, words)
            reading.report.tell(
                unknown_value,
                value.span,
                lost=sure is None,
                edits=respelt(value.span, node.value, words),
                value=node.value,
                what=f"value of `{reading.key}`",
                do="write " + ", ".join(f"`{one}`" for one in words),
            )
            return LOST if sure is None else Said(sure, value.span)
        return refuse(node, reading, {"x-says": "be one word"})

    return word


def _list(schema: Schema, inside: str) -> Reader:
    item = compiled(schema["items"], inside)
    least, most = schema.get("minItems", 0), schema.get("maxItems", 1_000_000)

    def read_list(node: Any, reading: Reading) -> Any:
        if type(node) is not SequenceNode or not least <= len(node.value) <= most:
            return refuse(node, reading, schema)
        if not reading.spend(len(node.value), node):
            return LOST
        read = [item(one, reading) for one in node.value]
        return tuple(read) if LOST not in read else tuple([one for one in read if one is not LOST])

    return read_list


def _any(schemas: list[Schema], inside: str, whole: Schema) -> Reader:
    """Alternatives that differ in what kind of node they are."""
    by_kind: dict[str, Reader] = {}
    for schema in schemas:
        for kind in _kinds(schema, inside):
            by_kind.setdefault(kind, compiled(schema, inside))
    scalar, null = by_kind.get("scalar"), by_kind.get("null")
    of_map, of_list = by_kind.get("map"), by_kind.get("list")

    def choose(node: Any, reading: Reading) -> Any:
        kind = type(node)
        if kind is ScalarNode:
            found = null if null and not node.value and not node.style else scalar
        else:
            found = of_map if kind is MappingNode else of_list
        if found is None:
            return refuse(node, reading, {"x-says": says(whole, inside)})
        return found(node, reading)

    return choose


def _kinds(schema: Schema, inside: str) -> tuple[str, ...]:
    """Which kinds of node a schema takes: scalar, null, list, map."""
    while "$ref" in schema:
        schema, inside = follow(schema["$ref"], inside)
    if "anyOf" in schema and "properties" not in schema:
        return tuple(kind for one in schema["anyOf"] for kind in _kinds(one, inside))
    match schema.get("type"):
        case "array":
            return ("list",)
        case "object":
            return ("map",)
        case "null":
            return ("null",)
        case _:
            return ("map",) if "properties" in schema else ("scalar",)


def _listed(schema: Schema, read: Reader) -> Reader:
    """`x-list`: one value will do; the result is a tuple."""
    if not schema.get("x-list"):
        return read

    def listed(node: Any, reading: Reading) -> Any:
        value = read(node, reading)
        return value if value is LOST or type(value) is tuple else (value,)

    return listed


def _short(schema: Schema, read: Reader) -> Reader:
    """`x-short`: a bare value stands for the map with this one key."""
    key = schema.get("x-short")
    return custom.short(key, read) if key else read
