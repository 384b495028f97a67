"""What a locator shows, as values: the look of each thing, the holes, and what is referred to."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum

from guidebuild.device.screw import Screw
from guidebuild.draw.svg import Point


class Look(Enum):
    """How a thing of a view is drawn at a step."""

    # Members are single objects; an enum's own hash is slow, and drawings ask for it often.
    __hash__ = object.__hash__

    FITTED = "fitted"  # as the author drew it
    NOW = "now"  # the work of this step: heavy
    AWAY = "away"  # lifted or off: chain with two dots, nothing inside
    LIVE = "live"  # charged or live: hatched
    LIVE_NOW = "live-now"  # charged, and the work of this step: hatched, in heavy line
    OPEN = "open"  # a plug that is out: its pins
    HIDDEN = "hidden"  # not there


class HoleLook(Enum):
    """How a hole is drawn."""

    __hash__ = object.__hash__

    SCREW = "screw"  # a screw in it, seen from above
    NOW = "now"  # a screw of this step: the ring
    EMPTY = "empty"  # ring with a cross


class End(Enum):
    """How a leader ends (ISO 128-2): an arrow on an edge, a dot on a face."""

    __hash__ = object.__hash__

    ARROW = "arrow"
    DOT = "dot"


WORKED = frozenset({Look.NOW, Look.LIVE_NOW})


@dataclass(frozen=True, slots=True)
class HoleMark:
    """A hole at `at` (mm on the view); `order` is its place in a tightening sequence.

    `place` is its own among all the holes of the view, which is the same in every step.
    """

    key: str
    at: Point
    screw: Screw | None
    look: HoleLook
    order: int | None = None
    place: int = 0


@dataclass(frozen=True, slots=True)
class Reference:
    """A label that refers to a thing: a hole's key, or an id that the view draws."""

    label: str
    thing: str
    end: End


@dataclass(frozen=True, slots=True)
class Scene:
    """Everything that tells one step's locator from another's. Ids without a look are FITTED.

    `places`: how many holes the view has, shown or not.
    """

    looks: Mapping[str, Look] = field(default_factory=dict)
    holes: tuple[HoleMark, ...] = ()
    references: tuple[Reference, ...] = ()
    places: int = 0

    def __hash__(self) -> int:
        """A dictionary has none of its own."""
        return hash((frozenset(self.looks.items()), self.holes, self.references))
