"""Maps: which keys may stand there, which must, and what is said about one that may not."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeAlias

from yaml.nodes import MappingNode, ScalarNode

from guidebuild.read.faults import repeated_key, unknown_key, wrong_type
from guidebuild.read.shape.entry import LOST, Entry
from guidebuild.read.shape.reading import Reading
from guidebuild.read.shape.schema import Schema, follow
from guidebuild.read.shape.words import refuse
from guidebuild.source.finding import Related
from guidebuild.source.nearest import meant, nearest
from guidebuild.source.respelt import respelt
from guidebuild.source.span import Span

Reader: TypeAlias = Callable[[Any, Reading], Any]
Compile: TypeAlias = Callable[[Schema, str], Reader]


@dataclass(frozen=True, slots=True)
class Keys:
    """What a schema says of a map's keys. `just_one` and `any_of`: sets of keys of which one, or some, must be."""

    readers: dict[str, Reader]
    others: Reader | None
    name_form: re.Pattern[str] | None
    name_says: str
    required: tuple[str, ...]
    just_one: tuple[str, ...]
    any_of: tuple[tuple[str, ...], ...]
    least: int


def map_reader(schema: Schema, inside: str, compile_: Compile) -> Reader:
    """The reader of a map; an unknown key or a bad value never hides the rest."""
    keys = _keys(schema, inside, compile_)

    def read_map(node: Any, reading: Reading) -> Any:
        if type(node) is not MappingNode:
            return refuse(node, reading, schema)
        if not reading.spend(len(node.value), node):
            return LOST
        return _read(keys, node, reading)

    return read_map


def _keys(schema: Schema, inside: str, compile_: Compile) -> Keys:
    readers = {}
    for part in schema.get("allOf", ()):
        shared, there = follow(part["$ref"], inside)
        readers.update({k: compile_(v, there) for k, v in shared.get("properties", {}).items()})
    readers.update({k: compile_(v, inside) for k, v in schema.get("properties", {}).items()})
    others = schema.get("additionalProperties")
    names = schema.get("propertyNames", {})
    if "$ref" in names:
        names, _ = follow(names["$ref"], inside)
    return Keys(
        readers=readers,
        others=compile_(others, inside) if isinstance(others, dict) else None,
        name_form=re.compile(names["pattern"]) if "pattern" in names else None,
        name_says=names.get("x-says", "be a name of the usual form"),
        required=tuple(schema.get("required", ())),
        just_one=tuple(one["required"][0] for one in schema.get("oneOf", ())),
        any_of=tuple(tuple(one["required"]) for one in schema.get("anyOf", ())),
        least=schema.get("minProperties", 0),
    )


def _read(keys: Keys, node: Any, reading: Reading) -> Entry:
    entry = Entry((reading, node))
    marks, values, readers = entry.marks, entry.values, keys.readers
    outer, lost = reading.key, False
    for key_node, value_node in node.value:
        name: str = key_node.value if type(key_node) is ScalarNode else ""  # no key is empty
        read = readers.get(name)
        if read is None or name in marks:
            reading.key = outer
            meant_name = _name(keys, key_node, entry, reading)
            if meant_name is None:
                lost = True
                continue
            name = meant_name
            read = readers.get(name) or keys.others
            if _is_strange(keys, name):  # what stands under it is most likely of another kind
                reading.report.excuse(reading.span(value_node))
        marks[name] = (reading, key_node)
        reading.key = name
        value = LOST if read is None else read(value_node, reading)
        if value is not LOST:
            values[name] = value
    reading.key = outer
    _ask_for(keys, entry, reading, lost)
    return entry


def _name(keys: Keys, node: Any, entry: Entry, reading: Reading) -> str | None:
    """The key that is meant, or None where its value can't be read."""
    if type(node) is not ScalarNode:
        refuse(node, reading, {"x-says": "have plain words for keys"})
        return None
    name: str = node.value
    if name not in keys.readers:
        if keys.others is None:
            return _unknown(keys, node, entry, reading)
        if _is_strange(keys, name):
            outer, reading.key = reading.key, name
            refuse(node, reading, {"x-says": keys.name_says})
            reading.key = outer
    if name in entry.marks:
        first = Related(entry.key(name).span, "stands here first")
        same = entry.span.start  # a lost line between two entries makes one mistake of many keys
        reading.report.tell(repeated_key, reading.span(node), related=(first,), same=same, key=name)
        return None
    return name


def _is_strange(keys: Keys, name: str) -> bool:
    """Whether a name that the author chose has not the form of such names."""
    form = keys.name_form
    return name not in keys.readers and (not name or (form is not None and not form.search(name)))


def _unknown(keys: Keys, node: Any, entry: Entry, reading: Reading) -> str | None:
    span, name = reading.span(node), node.value
    free = [key for key in keys.readers if key not in entry.marks]
    guess, sure = nearest(name, free), meant(name, free)
    do = f"write `{guess}`" if guess else "these may stand here: " + ", ".join(free[:30])
    reading.report.tell(
        unknown_key,
        span,
        lost=sure is None,
        edits=respelt(span, name, free),
        key=name,
        where=f"`{reading.key}`",
        do=do,
    )
    return sure


def _ask_for(keys: Keys, entry: Entry, reading: Reading, lost: bool) -> None:
    """Keys that must be there. `lost`: one could not be read, and is most likely the one that is missing."""
    for name in keys.required:
        if name not in entry.marks:
            _missing(entry, reading, f"have the key `{name}`", f"add `{name}:`")
    if keys.just_one and sum(map(entry.marks.__contains__, keys.just_one)) != 1:
        _not_just_one(keys, entry, reading, lost)
    if keys.any_of and not any(all(n in entry.marks for n in names) for names in keys.any_of):
        names = [name for name in keys.any_of[-1] if name not in entry.marks]
        listed = ", ".join(f"`{name}`" for name in names)
        _missing(entry, reading, f"have the key {listed}", f"add {listed}")
    if len(entry.marks) < keys.least:
        _missing(entry, reading, "say something", "add what you mean, or take it out")


def _not_just_one(keys: Keys, entry: Entry, reading: Reading, lost: bool) -> None:
    """None of a set of keys, or more than one."""
    there = [name for name in keys.just_one if name in entry.marks]
    if there:
        _one_too_many(entry, reading, there)
    elif not lost:
        listed = ", ".join(f"`{name}`" for name in keys.just_one)
        _missing(entry, reading, f"have one of {listed}", "add the one that you mean")


def _missing(entry: Entry, reading: Reading, wanted: str, do: str) -> None:
    span = entry.span
    line = span.source.text.find("\n", span.start, span.end)
    first = Span(span.source, span.start, span.end if line < 0 else line)
    reading.report.tell(wrong_type, first, what=f"`{reading.key}`", wanted=wanted, found="", do=do)


def _one_too_many(entry: Entry, reading: Reading, there: list[str]) -> None:
    second = entry.key(there[1])
    first = Related(entry.key(there[0]).span, "the other one")
    reading.report.tell(
        wrong_type,
        second.span,
        related=(first,),
        what=f"`{reading.key}`",
        wanted=f"have either `{there[0]}` or `{there[1]}`",
        found=", not both",
        do="write each in an entry of its own, or take one out",
    )
    for name in there[1:]:
        entry.values.pop(name, None)
