"""One line that a reader ticks off: a thing or several alike, and what is done to them."""

from dataclasses import dataclass, field
from enum import Enum

from guidebuild.device.screw import Screw
from guidebuild.outputs.html.page.when import When
from guidebuild.translate.messages.text import Text


class Pocket(Enum):
    """Which way screws go on the tray."""

    TO = "to"
    FROM = "from"


@dataclass(frozen=True, slots=True)
class ToolUse:
    """Tools of which any one will do: `ids` of tools.yaml, or a drive that no tool of the list fits."""

    ids: tuple[str, ...] = ()
    drive: str | None = None


@dataclass(frozen=True, slots=True)
class Line:
    """`do` is the order, `details` what stands back behind it, `notes` the author's own words to it.

    `things` are keys of the record; `where` the configurations; `when` the same in words, if it is to be told.
    """

    do: Text
    things: tuple[str, ...]
    where: int
    references: tuple[str, ...] = ()
    details: tuple[Text, ...] = ()
    notes: tuple[Text, ...] = ()
    stuck: Text = ()
    screw: Screw | None = None
    count: int = 1
    tools: tuple[ToolUse, ...] = ()
    pocket: Pocket | None = None
    when: When | None = None
    id: str = ""
    orders: tuple[tuple[str, int], ...] = field(default=())  # holes in their order of tightening
