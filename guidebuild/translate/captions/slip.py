"""What a check says of one caption of a film."""

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class CueSlip:
    """`cue`: its place among the film's captions, from 0; `words` fill the check's MESSAGE and HELP."""

    cue: int
    words: Mapping[str, object] = field(default_factory=dict)
