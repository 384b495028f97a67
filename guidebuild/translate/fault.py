"""What is wrong in a file that came from outside (XLIFF, PO): where, and which rule it breaks."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, order=True)
class Fault:
    """`line` and `column` count from 1, in code points; `rule` is a name in words, `message` one sentence."""

    line: int
    column: int
    rule: str
    message: str
