"""The guide sends the reader away while the device is open and switched on.

"Stop here and ask" means that the device stays on the bench, for an hour or overnight, live and
without its cover, and the next person does not know.

Source: common practice, no source.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import reduce
from operator import or_

from guidebuild.device.record import POWER
from guidebuild.guide.blocks.check import Check
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof, Snapshot
from guidebuild.proof.questions.history import by_verb, put_there
from guidebuild.proof.questions.standing import live, opened
from guidebuild.source.finding import Category, Related
from guidebuild.source.said import Said

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "the reader stops here while the device is open and switched on"

HELP = "say in these words to switch it off or to unplug it, or switch it off before"


MAKES_SAFE = re.compile(
    r"\b(switch(ed)? (it |the \w+ )?off|turn(ed)? (it |the \w+ )?off|unplug|disconnect|isolat|power off"
    r"|(pull|open) the (\w+ )*plug)",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Stop:
    """`said` sends the reader away in `bad` of `where`."""

    said: Said
    bad: int
    where: int


def check(proof: Proof) -> Iterator[Hit]:
    """A device that nobody switches off is one mistake, told at the first stop."""
    stops = [stop for stop in _stops(proof) if stop.bad and not MAKES_SAFE.search(stop.said.text)]
    if stops:
        first, *others = stops
        there = put_there(proof, [POWER], None, first.bad)
        too = tuple(Related(stop.said.span, "the reader stops here too") for stop in others)
        bad = reduce(or_, (stop.bad for stop in stops))
        yield Hit(first.said.span, {}, there + too, bad)


def _stops(proof: Proof) -> Iterator[Stop]:
    for one in by_verb(proof).get(None, ()):
        if isinstance(one.doing, Check) and one.doing.stop is not None:
            yield _stop(proof, one.doing.stop, one.before, one.where)
    for stage in proof.guide.stages:
        for said in (stage.remedy.stop if stage.remedy else None, stage.then):
            if said is not None:
                ends = [one for one in proof.passages if one.stage.id == stage.id and one.shown]
                yield from (_stop(proof, said, end.after, end.shown) for end in ends[-1:])


def _stop(proof: Proof, said: Said, there: Snapshot, where: int) -> Stop:
    return Stop(said, opened(proof, there, live(proof, there, where)), where)
