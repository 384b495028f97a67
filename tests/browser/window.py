"""What every browser does for a test: pages from the disk, any size of screen, keys, a finger."""

from typing import Any, Protocol


class Window(Protocol):
    """One browser for many tests; each opens what it looks at."""

    def screen(self, width: int, height: int = 900) -> None:
        """The size of the page in CSS pixels."""

    def open(self, url: str) -> None:
        """Open a page as if for the first time: nothing is kept of what a reader did before."""

    def go(self, url: str) -> None:
        """Open a page as the same reader does who was here before."""

    def reload(self) -> None:
        """The page again."""

    def value(self, expression: str) -> Any:
        """The value of an expression in the page, awaited."""

    def key(self, key: str) -> None:
        """A key, pressed with nothing in particular in focus."""

    def tap(self, x: float, y: float) -> None:
        """A finger at a place of the window, in CSS pixels."""

    def swipe(self, start: tuple[float, float], end: tuple[float, float]) -> None:
        """A finger drawn from one place to another."""

    def complaints(self) -> list[str]:
        """What the console said since the page was opened: errors and blocked things are among it."""

    def asked_for(self) -> list[str]:
        """Every address that was asked for since the page was opened."""
