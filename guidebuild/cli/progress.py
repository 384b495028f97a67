"""A bar while something takes long: on a terminal only, and gone when it is done."""

import sys
from time import monotonic
from typing import Protocol

WIDTH = 30
PATIENCE = 0.4  # seconds before a bar appears: short work shows none
BETWEEN = 0.1  # seconds between two drawings of it


class Screen(Protocol):
    """What a bar is drawn on."""

    def isatty(self) -> bool: ...
    def write(self, text: str, /) -> int: ...
    def flush(self) -> None: ...


class Bar:
    """Call it with what is done, of how many; close it before anything else is printed."""

    def __init__(
        self, doing: str, stream: Screen | None = None, patience: float = PATIENCE
    ) -> None:
        self.doing = doing
        self.stream: Screen = stream or sys.stderr
        self.shown = False
        self.next = monotonic() + patience if self.stream.isatty() else float("inf")

    def __call__(self, done: int, total: int) -> None:
        """So many of so many are done."""
        now = monotonic()
        if now < self.next or not total:
            return
        self.next = now + BETWEEN
        self.shown = True
        filled = WIDTH * done // total
        bar = "=" * filled + " " * (WIDTH - filled)
        self.stream.write(f"\r{self.doing} [{bar}] {done} of {total}")
        self.stream.flush()

    def close(self) -> None:
        """Wipe the bar off its line."""
        if self.shown:
            self.stream.write("\r\x1b[K")
            self.stream.flush()
            self.shown = False
