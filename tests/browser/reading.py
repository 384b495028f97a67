"""A page read as text: its elements with their attributes, its ids."""

from dataclasses import dataclass, field
from html.parser import HTMLParser
from pathlib import Path


@dataclass(frozen=True)
class Page:
    """`elements`: (name, attributes) in order; `words`: all text."""

    elements: list[tuple[str, dict[str, str]]] = field(default_factory=list)
    words: list[str] = field(default_factory=list)

    @property
    def ids(self) -> list[str]:
        """Every id, in order."""
        return [said["id"] for _, said in self.elements if "id" in said]

    def each(self, *names: str) -> list[dict[str, str]]:
        """The attributes of all elements of these names."""
        return [said for name, said in self.elements if name in names]


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.page = Page()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.page.elements.append((tag, {name: value or "" for name, value in attrs}))

    def handle_data(self, data: str) -> None:
        self.page.words.append(data)


def read(file: Path) -> Page:
    """A page of a site."""
    reader = _Reader()
    reader.feed(file.read_text(encoding="utf-8"))
    return reader.page
