"""What a schema asks for and what stands there instead, in words."""

import re
from typing import Any

from yaml.nodes import MappingNode, ScalarNode

from guidebuild.read.faults import wrong_type
from guidebuild.read.shape.entry import LOST, Lost
from guidebuild.read.shape.reading import TRAPPED, Reading
from guidebuild.read.shape.schema import Schema, follow
from guidebuild.source.edit import Edit
from guidebuild.source.span import Span

_TIGHT = re.compile(r"([a-z][a-z-]*):(?=\S)")


def says(schema: Schema, inside: str) -> str:
    """`be a text`, `be a map of keys`, `be an id, or a list of them`."""
    while "$ref" in schema:
        schema, inside = follow(schema["$ref"], inside)
    if "x-says" in schema:
        return str(schema["x-says"])
    if "anyOf" in schema and "properties" not in schema:
        if schema.get("x-list"):
            return says(schema["anyOf"][0], inside) + ", or a list of such"
        return ", or ".join(dict.fromkeys(says(one, inside) for one in schema["anyOf"]))
    match schema.get("type"):
        case "array":
            return "be a list"
        case "null":
            return "be empty"
        case _:
            return "be one of the listed words" if "enum" in schema else "be a map of keys"


def _keys(schema: Schema) -> str:
    """`: replace:, remove:` for a map whose keys are known, so that nobody has to look them up."""
    names = list(schema.get("properties", ()))[:12]
    return ": " + ", ".join(f"`{name}:`" for name in names) if names else ""


def found_words(node: Any) -> str:
    """`, not a list`."""
    if type(node) is ScalarNode:
        if not node.value:
            return ", and nothing stands here"
        short = node.value if len(node.value) <= 40 else node.value[:39] + "…"
        return f", not `{short}`".replace("\n", " ")
    return ", not a map" if type(node) is MappingNode else ", not a list"


def refuse(node: Any, reading: Reading, schema: Schema) -> Lost:
    """Tell that a value has the wrong shape; one that a trap cut short is told of already."""
    span = reading.span(node)
    if type(node) is ScalarNode and node.style == TRAPPED:
        reading.report.broken.add(span.source.path)
        return LOST
    edits: tuple[Edit, ...] = ()
    do = "see `guidebuild explain wrong-type`, or the schema, for what may stand here"
    wanted = says(schema, "")
    tight = _TIGHT.match(node.value) if type(node) is ScalarNode and not node.style else None
    if tight and "map" in wanted:
        at = span.start + tight.end()
        edits, do = (Edit(Span(span.source, at, at), " "),), "put a space after the colon"
    elif wanted.startswith("be "):
        do = f"let it {wanted}{_keys(schema)}"
    if not reading.quiet:
        reading.report.tell(
            wrong_type,
            span,
            edits=edits,
            what=f"`{reading.key}`",
            wanted=wanted,
            found=found_words(node),
            do=do,
        )
    return LOST
