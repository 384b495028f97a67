"""What is wrong in an XLIFF file, by the standard's rule that it breaks."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, order=True)
class Fault:
    """`line` and `column` count from 1, in code points; `rule` is a name in words, `message` one sentence."""

    line: int
    column: int
    rule: str
    message: str
