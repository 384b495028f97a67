"""A caption: when it shows, where on the picture, and its text with tags."""

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Region:
    """A part of the picture that captions scroll in. Percentages of the picture; `lines` of text."""

    id: str = ""
    width: float = 100
    lines: int = 3
    anchor: tuple[float, float] = (0, 100)
    viewport: tuple[float, float] = (0, 100)
    scroll: bool = False


@dataclass(frozen=True, slots=True)
class Placing:
    """Where a caption stands; None is `auto`. Percentages, but `line` counts lines if `snap`."""

    vertical: str = ""
    line: float | None = None
    line_align: str = "start"
    snap: bool = True
    position: float | None = None
    position_align: str = "auto"
    size: float = 100
    align: str = "center"
    region: Region | None = None


@dataclass(frozen=True, slots=True)
class Cue:
    """One caption. Times in milliseconds; `settings` as written; `line` in the file, from 1."""

    id: str
    start: int
    end: int
    text: str
    placing: Placing = field(default_factory=Placing)
    settings: str = ""
    line: int = field(default=0, compare=False)


@dataclass(frozen=True, slots=True)
class Captions:
    """A whole file: the text after WEBVTT, style sheets, regions and cues, in order."""

    header: str
    styles: tuple[str, ...]
    regions: tuple[Region, ...]
    cues: tuple[Cue, ...]
