"""A guide before it is written down: stages, steps and what stands in them."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TypeAlias

Value: TypeAlias = "str | int | bool | tuple[str, ...] | Mapping[str, Value]"
Entry: TypeAlias = Mapping[str, Value]  # one act, check or caution: its keys in order


@dataclass(frozen=True, slots=True)
class Block:
    """A typed block: its name and one entry or several."""

    name: str
    entries: tuple[Entry, ...]


@dataclass(frozen=True, slots=True)
class Text:
    """A paragraph."""

    words: str


@dataclass(frozen=True, slots=True)
class Comment:
    """What only the author sees."""

    words: str


Item: TypeAlias = Block | Text | Comment


@dataclass(frozen=True, slots=True)
class Step:
    """`when` is a condition as authors write it; `id` only where something leads here."""

    title: str
    items: tuple[Item, ...]
    when: str = ""
    id: str = ""
    keys: frozenset[str] = frozenset()  # what is handled in it


@dataclass(frozen=True, slots=True)
class Stage:
    """`shared`: the path of a shared stage, relative to the guide. `entry`: the keys of its `stage` block."""

    title: str
    steps: tuple[Step, ...] = ()
    shared: str = ""
    entry: Entry = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Script:
    """`front`: the front matter's keys in order."""

    front: Entry
    intro: str
    stages: tuple[Stage, ...]
