"""What stands in the column of acts: lines and sentences in lists, and between them waits, checks, methods."""

from dataclasses import dataclass
from typing import TypeAlias

from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.alike import Likes
from guidebuild.outputs.html.page.cautions import Panel
from guidebuild.outputs.html.page.checks import CheckView
from guidebuild.outputs.html.page.prose import Block
from guidebuild.outputs.html.page.when import When
from guidebuild.translate.messages.text import Text


@dataclass(frozen=True, slots=True)
class Tick:
    """A line with its tick box; `svg` is its screw, drawn to scale."""

    line: Line
    svg: str
    kind: str = "tick"


@dataclass(frozen=True, slots=True)
class Saying:
    """The author's own words between the acts."""

    block: Block
    kind: str = "saying"


@dataclass(frozen=True, slots=True)
class Only:
    """Entries that hold under one condition."""

    when: When
    entries: tuple["Entry", ...]
    kind: str = "only"


Entry: TypeAlias = Tick | Saying | Likes | Only


@dataclass(frozen=True, slots=True)
class Acts:
    """A run of entries."""

    entries: tuple[Entry, ...]
    kind: str = "acts"


@dataclass(frozen=True, slots=True)
class WaitView:
    """Time that must pass; `seconds` for the timer."""

    id: str
    title: Text
    reason: Text
    seconds: int
    svg: str
    clock: str
    kind: str = "wait"


@dataclass(frozen=True, slots=True)
class Way:
    """One of several methods."""

    letter: str
    title: Text
    panels: tuple[Panel, ...]
    nodes: tuple["Node", ...]
    when: When | None


@dataclass(frozen=True, slots=True)
class Methods:
    """Methods that fork and join again; the tracks are drawn."""

    ways: tuple[Way, ...]
    fork: str
    join: str
    kind: str = "methods"


@dataclass(frozen=True, slots=True)
class OnlyNodes:
    """Waits, checks or methods that hold under one condition."""

    when: When
    nodes: tuple["Node", ...]
    kind: str = "only_nodes"


Node: TypeAlias = Acts | WaitView | CheckView | Methods | OnlyNodes
