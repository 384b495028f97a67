"""What a screw is, from the words on its bag: `M2.5x8 countersunk TX8`."""

from dataclasses import dataclass, field
from decimal import Decimal

from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Screw:
    """Lengths in mm; of a countersunk head, `length` is overall (ISO 225), of others under the head.

    What the words do not say is None, except that a missing pitch is the coarse one where there is one.
    """

    text: str  # as written
    thread: str  # `M2.5`, `ST2.2`, `#4-40`
    diameter: Decimal | None = None
    pitch: Decimal | None = None
    length: Decimal | None = None
    head: str | None = None  # a word of the head vocabulary: `pan`, `countersunk`, ...
    drive: str | None = None  # drive and size: `TX8`, `PH1`, `hex 2.5`, `slot 0.8x4`
    standard: str | None = None  # `ISO 7046-2`
    span: Span | None = field(default=None, compare=False)
    strength: str | None = None  # property class: `8.8`, `A2-70`
    locking: str | None = None  # `patch`, `adhesive`, `insert`, `washer`
    captive: bool = False  # the words say so

    def __hash__(self) -> int:
        """Of its words alone: drawings look up what they know of a screw by the thousand."""
        return hash(self.text)
