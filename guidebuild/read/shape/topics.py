"""What may be written where, told from the schemas: each block, each kind of file, each section of a record."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.read.shape.samples import of_block, of_file, of_section
from guidebuild.read.shape.schema import Schema, block_names, document, follow
from guidebuild.read.shape.words import says

# Words that stand in nearly every row, short.
_SHORT = {
    "id": "an id",
    "ids": "an id, or a list",
    "target": "an id",
    "targets": "an id, or a list",
    "text": "a text",
    "texts": "a text, or a list",
}
FILES = {"device": "device", "guide": "guide", "kit": "kit", "settings": "guidebuild"}


@dataclass(frozen=True, slots=True)
class Key:
    """A key: what it takes, in words, and what is said of it. `acts`: just one of these stands in an entry."""

    name: str
    takes: str
    about: str
    must: bool = False
    acts: bool = False


@dataclass(frozen=True, slots=True)
class Topic:
    """A block, a file or a section: `kind` says which; `example` is as an author writes it."""

    name: str
    kind: str
    title: str
    about: str
    keys: tuple[Key, ...]
    example: str


def topic_names() -> tuple[str, ...]:
    """The blocks, the files, the sections of a record, in this order."""
    return tuple(dict.fromkeys((*block_names(), *FILES, *_sections())))


def topic(name: str) -> Topic:
    """What may be written there; KeyError where there is no such topic."""
    if name in block_names():
        inside = f"blocks/{name}"
        schema = document(inside)
        return _topic(name, "block", schema, inside, of_block(name))
    if name in FILES:
        return _topic(name, "file", document(name), name, of_file(FILES[name]))
    section = _sections()[name]
    return _topic(name, "section of the device record", section, "device", of_section(name))


def _sections() -> dict[str, Schema]:
    """The maps of a record whose keys are ids that an author chooses."""
    keys = document("device")["properties"].items()
    return {name: schema for name, schema in keys if of_section(name) and "propertyNames" in schema}


def _topic(name: str, kind: str, schema: Schema, inside: str, example: str) -> Topic:
    entry, there = _entry(schema, inside)
    return Topic(
        name=name,
        kind=kind,
        title=schema.get("title", ""),
        about=schema.get("description", ""),
        keys=tuple(_keys(entry, there)),
        example=example,
    )


def _entry(schema: Schema, inside: str) -> tuple[Schema, str]:
    """The map that an author writes: past references, lists of it, and ids of the author's own."""
    while True:
        if "$ref" in schema:
            schema, inside = follow(schema["$ref"], inside)
        elif "properties" in schema or "allOf" in schema:
            return schema, inside
        elif "anyOf" in schema:
            schema = next((one for one in schema["anyOf"] if _is_map(one, inside)), {})
        elif isinstance(schema.get("additionalProperties"), dict):
            schema = schema["additionalProperties"]
        else:
            return {}, inside


def _is_map(schema: Schema, inside: str) -> bool:
    while "$ref" in schema:
        schema, inside = follow(schema["$ref"], inside)
    return schema.get("type") == "object"


def _keys(entry: Schema, inside: str) -> Iterator[Key]:
    must = set(entry.get("required", ()))
    acts = {one["required"][0] for one in entry.get("oneOf", ())}
    shared = [follow(part["$ref"], inside) for part in entry.get("allOf", ())]
    for properties, there in [(entry, inside), *shared]:
        for name, schema in properties.get("properties", {}).items():
            about = _about(schema, there)
            yield Key(name, _takes(schema, there), about, name in must, name in acts)


def _takes(schema: Schema, inside: str) -> str:
    """`a text`; `cross or listed`."""
    while "$ref" in schema:
        short = _SHORT.get(schema["$ref"].rpartition("/")[2])
        if short:
            return short
        schema, inside = follow(schema["$ref"], inside)
    if "enum" in schema or "const" in schema:
        words = schema.get("enum", [schema.get("const")])
        return " or ".join(f"`{one}`" for one in words if isinstance(one, str))
    if "properties" in schema:
        return "a map of " + ", ".join(f"`{name}:`" for name in schema["properties"])
    said = says(schema, inside)
    return said.removeprefix("be ").replace(", or be ", ", or ")


def _about(schema: Schema, inside: str) -> str:
    while "$ref" in schema and "description" not in schema:
        schema, inside = follow(schema["$ref"], inside)
    return str(schema.get("description", ""))
