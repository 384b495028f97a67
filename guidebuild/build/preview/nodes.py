"""A record's YAML as nodes with places, asked key by key; nothing is written out again."""

from dataclasses import dataclass
from typing import Any

from guidebuild.read.report import Report
from guidebuild.read.yaml.compose import compose
from guidebuild.source.text import Source


@dataclass(frozen=True, slots=True)
class Node:
    """A value: where it begins and ends in the text, and what it is: `map`, `list`, `text` or `nothing`."""

    start: int
    end: int
    kind: str
    flow: bool
    inside: Any

    def get(self, key: str) -> "Pair | None":
        """The pair of a map with this key."""
        for name, value in self.inside if self.kind == "map" else ():
            if name.value == key:
                return Pair(_node(name), _node(value))
        return None

    def first(self) -> "Pair | None":
        """The first pair of a map."""
        for name, value in self.inside if self.kind == "map" else ():
            return Pair(_node(name), _node(value))
        return None


@dataclass(frozen=True, slots=True)
class Pair:
    """A key with its value."""

    key: Node
    value: Node


def root(text: str) -> Node | None:
    """The whole text as a node; None where it can't be read or says nothing."""
    composed = compose(Source("record", text), 0, len(text), Report(), "record")
    return None if composed is None or composed[0] is None else _node(composed[0])


def _node(of: Any) -> Node:
    start, end = of.start_mark.index, of.end_mark.index
    if isinstance(of.value, str):
        return Node(start, end, "text" if of.value or of.style else "nothing", False, of.value)
    pairs = bool(of.value) and isinstance(of.value[0], tuple)
    kind = "map" if pairs or type(of).__name__ == "MappingNode" else "list"
    return Node(start, end, kind, bool(of.flow_style), of.value)
