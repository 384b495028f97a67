"""A content folder as read: every value that is made of it, and the sources that they stand in."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal

from guidebuild.device.kit import Kit
from guidebuild.device.record import Device
from guidebuild.device.tool import Tool
from guidebuild.guide.guide import Guide
from guidebuild.guide.settings import Settings, Terms
from guidebuild.source.text import Source


@dataclass(frozen=True, slots=True)
class GuideRead:
    """A guide and the device as it has it: of all its models, with what its kits bring along.

    `whole`: nothing that the author wrote was lost in reading it, so that a proof of it means something.
    `files`: every file that went into it, relative to the content folder.
    """

    guide: Guide
    device: Device
    whole: bool = True
    files: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class PictureFacts:
    """What an author's picture is: pixels of the upright picture, and whether its metadata tell a place."""

    width: int
    height: int
    tells_place: bool = False


@dataclass(frozen=True, slots=True)
class Content:
    """Everything that was read under `root`. `guides` are in order of their paths."""

    root: str
    settings: Settings
    tools: Mapping[str, Tool]
    terms: Mapping[str, Terms]
    devices: Mapping[str, Device]
    kits: Mapping[str, Kit]
    guides: tuple[GuideRead, ...]
    sources: Mapping[str, Source] = field(default_factory=dict)
    files: frozenset[str] = frozenset()  # all files in the folder, relative to it
    pictures: Mapping[str, PictureFacts] = field(default_factory=dict)  # of pixels, by path
    unshown: Mapping[str, tuple[str, str]] = field(
        default_factory=dict
    )  # pictures and views that no page can show, by path: why, and what to do
    films: Mapping[str, Decimal] = field(default_factory=dict)  # length in seconds, by path
    captions: Mapping[str, str] = field(default_factory=dict)  # WebVTT, by the film's path
    drawn: Mapping[str, frozenset[str]] = field(
        default_factory=dict
    )  # ids in a view's file, by path
