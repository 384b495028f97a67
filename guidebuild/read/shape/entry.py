"""A map as read: its keys with their places, its values with their own."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any, Final, TypeAlias, TypeVar

from guidebuild.read.shape.reading import Reading
from guidebuild.source.said import Said
from guidebuild.source.span import Span

T = TypeVar("T")
Node: TypeAlias = tuple[Reading, Any]  # its place is worked out when somebody asks for it


class Lost:
    """What stands for a value that could not be read; the finding is already told."""


LOST: Final = Lost()


@dataclass(slots=True)
class Entry:
    """Keys in the author's order. A key whose value was lost is in `marks`, but not in `values`."""

    place: Span | Node
    marks: dict[str, Said | Node] = field(default_factory=dict)
    values: dict[str, Any] = field(default_factory=dict)

    @property
    def span(self) -> Span:
        """Where the map stands."""
        if not isinstance(self.place, Span):
            reading, node = self.place
            self.place = reading.span(node)
        return self.place

    def key(self, name: str) -> Said:
        """A key as it stands in the file."""
        mark = self.marks[name]
        if not isinstance(mark, Said):
            reading, node = mark
            mark = self.marks[name] = Said(name, reading.span(node))
        return mark

    def each(self) -> Iterator[tuple[Said, Any]]:
        """Every key that has a value, with that value."""
        return ((self.key(name), value) for name, value in self.values.items())

    def get(self, key: str, default: T) -> T:
        """The value of a key; its type is what the schema says of that key."""
        value: T = self.values.get(key, default)
        return value

    def said(self, key: str) -> Said | None:
        """The text of a key, or None."""
        value: Said | None = self.values.get(key)
        return value

    def all_said(self, key: str) -> tuple[Said, ...]:
        """The texts of a key that takes a list."""
        value: tuple[Said, ...] = self.values.get(key, ())
        return value

    def entries(self, key: str) -> dict[str, Any]:
        """The values of the map under a key; empty where it is not there."""
        inside = self.values.get(key)
        return inside.values if isinstance(inside, Entry) else {}

    def entry(self, key: str) -> "Entry | None":
        """The map under a key, or None."""
        inside = self.values.get(key)
        return inside if isinstance(inside, Entry) else None
