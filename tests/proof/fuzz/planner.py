"""A simple planner: takes apart what is in the way of its aim, then puts all back in reverse.

It is driven by what the oracle says is wrong with an act, in one configuration; so what it plans is right
there, and often elsewhere. It gives up where it is asked for the impossible.
"""

from dataclasses import dataclass, field

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER
from guidebuild.device.states import Kind
from guidebuild.guide.step import Step
from guidebuild.proof.mistake import Need
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.ink import Ink
from tests.proof.fuzz.wishes import Wish, written
from tests.proof.oracle.deeds import Deed
from tests.proof.oracle.effects import do
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.needs import first_unmet
from tests.proof.oracle.sets import ABSENT, HALF, IN, LEFT, OUT, WORN
from tests.proof.oracle.tree import ends, is_on

OPENS = {
    Kind.PART: Verb.REMOVE,
    Kind.FASTENER: Verb.REMOVE,
    Kind.CONNECTOR: Verb.DISCONNECT,
    Kind.JOINT: Verb.RELEASE,
    Kind.STORE: Verb.RELEASE,
    Kind.POWER: Verb.SWITCH_OFF,
}
CLOSES = {
    Kind.PART: Verb.REFIT,
    Kind.FASTENER: Verb.REFIT,
    Kind.CONNECTOR: Verb.RECONNECT,
    Kind.JOINT: Verb.CLOSE,
    Kind.STORE: Verb.RESTORE,
    Kind.POWER: Verb.SWITCH_ON,
}
CLOSE_FIRST = {Need.MET, Need.SHUT, Need.SOURCE, Need.POWERED, Need.CARRIED}


@dataclass
class Planner:
    """`done`: what was done so far, in order; `deep` bounds how far it goes for one aim."""

    moment: Moment
    dice: Dice
    step: Step
    done: list[tuple[Verb, str]] = field(default_factory=list)

    def open(self, key: str, deep: int = 4) -> None:
        """Get a thing off, out, open or empty."""
        world = self.moment.world
        kind = world.kind(key)
        if self.moment.perhaps(key, IN | HALF):
            verb = OPENS[kind]
            if kind is Kind.PART and self.dice.often(20):
                verb = Verb.LIFT
            if world.captive(key):
                verb = Verb.LOOSEN
            elif kind is Kind.FASTENER and self.dice.often(15):
                self.act(Verb.LOOSEN, key, deep)
            self.act(verb, key, deep)

    def close(self, key: str, deep: int = 4) -> None:
        """Get a thing on, in, shut or full."""
        kind = self.moment.world.kind(key)
        if kind is Kind.PART:
            self.renew_worn(key, deep)
        if self.moment.surely(key, WORN):
            self.act(Verb.RENEW, key, deep)
        if self.moment.surely(key, HALF):
            self.act(Verb.LOWER if kind is Kind.PART else Verb.TIGHTEN, key, deep)
        elif self.moment.perhaps(key, OUT):
            self.act(CLOSES[kind], key, deep)

    def renew_worn(self, part: str, deep: int) -> None:
        """Seals and strips of a part are renewed before it goes on."""
        for joint in self.moment.world.joints():
            if part in ends(self.moment.world, joint.key) and self.moment.surely(joint.key, WORN):
                self.act(Verb.RENEW, joint.key, deep)

    def act(self, verb: Verb, key: str, deep: int = 4) -> None:
        """First what is in the way, then the act itself, if it can be done by then."""
        kind = self.moment.world.kind(key)
        word = written(Ink(), Wish(kind, verb, (key,)))
        deed = Deed(verb, key, word, self.step, word.targets[0])
        for _ in range(3):
            unmet = first_unmet(self.moment, deed)
            if unmet is None:
                do(self.moment, deed, None)
                self.done.append((verb, key))
                return
            if not unmet[1] or deep == 0:
                return
            for blamed in sorted(unmet[1]):
                if unmet[0] in CLOSE_FIRST:
                    self.close(blamed, deep - 1)
                else:
                    self.open(blamed, deep - 1)

    def put_back(self) -> None:
        """Everything that was opened, the last first."""
        for verb, key in reversed(list(self.done)):
            if verb in OPENS.values() or verb in (Verb.LIFT, Verb.LOOSEN):
                filled = self.moment.world.things[key]
                if not self.moment.surely(key, IN) and filled is not None:
                    self.close(key)

    def strip(self, parts: list[str]) -> None:
        """What is on a part may be taken off it before the part is changed."""
        world = self.moment.world
        for rider in world.all_parts():
            if any(is_on(world, rider.key, part) for part in parts) and self.dice.often(35):
                self.open(rider.key)

    def change(self, part: str) -> None:
        """A new one for the old one, or one more."""
        if self.moment.surely(part, ABSENT):
            self.act(Verb.ADD, part)
        elif self.moment.perhaps(part, OUT | WORN | LEFT):
            self.act(Verb.EXCHANGE, part)

    def move_over(self) -> None:
        """What was left on the old unit is taken off it."""
        for key in list(self.moment.world.things):
            kind = self.moment.world.kind(key)
            if self.moment.surely(key, LEFT) and kind is Kind.PART and self.dice.often(60):
                self.act(Verb.REMOVE, key)
                self.close(key)

    def finish(self) -> None:
        """What is still open, parts before what ties them; and what came packed on the new unit is off."""
        things = self.moment.world.things
        for part in self.moment.world.all_parts():
            if part.packing and self.moment.perhaps(part.key, IN):
                self.open(part.key)
            elif not part.packing and not self.moment.surely(part.key, IN):
                self.close(part.key)
        for key in things:
            if key != POWER and not self.moment.perhaps(key, IN | LEFT | ABSENT):
                self.close(key)
        self.close(POWER)
