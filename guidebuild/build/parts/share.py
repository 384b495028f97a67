"""Which guides are a part's own: `2/5` is the second of five."""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from guidebuild.build.trouble import Trouble

_PART = re.compile(r"([0-9]{1,6})/([0-9]{1,6})")


@dataclass(frozen=True, slots=True, order=True)
class Share:
    """`number` runs from 1 to `of`."""

    number: int
    of: int

    def mine(self, paths: Sequence[str]) -> Sequence[str]:
        """This part's run of all paths: neighbours share a device, whose record is then read once."""
        return paths[
            len(paths) * (self.number - 1) // self.of : len(paths) * self.number // self.of
        ]

    @property
    def first(self) -> bool:
        """The first part also has what no guide draws on."""
        return self.number == 1

    def __str__(self) -> str:
        return f"{self.number} of {self.of}"


def share(words: str) -> Share:
    """What stands behind --part; Trouble where it is no part of anything."""
    found = _PART.fullmatch(words)
    if found and 1 <= int(found[1]) <= int(found[2]):
        return Share(int(found[1]), int(found[2]))
    raise Trouble(f"--part {words} is no part. Write K/N, as in 2/5 for the second of five.")
