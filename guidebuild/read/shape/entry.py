"""A map as read: its keys with their places, its values with their own."""

from dataclasses import dataclass, field
from typing import Any, Final, TypeVar

from guidebuild.source.said import Said
from guidebuild.source.span import Span

T = TypeVar("T")


class Lost:
    """What stands for a value that could not be read; the finding is already told."""


LOST: Final = Lost()


@dataclass(slots=True)
class Entry:
    """Keys in the author's order. A key whose value was lost is in `keys`, but not in `values`."""

    span: Span
    keys: dict[str, Said] = field(default_factory=dict)
    values: dict[str, Any] = field(default_factory=dict)

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
