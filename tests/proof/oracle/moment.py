"""The device at one moment: for each thing the set of states that may be true of it."""

from dataclasses import dataclass

from tests.proof.oracle.sets import GONE, HALF, HERE_AND_ON, IN, UNKNOWN, Maybe
from tests.proof.oracle.tree import between, chain, is_on, up_to
from tests.proof.oracle.world import World


@dataclass
class Moment:
    """`now`: by key. `unit`: of each part to be replaced, whether it is the old one, in the hand, or fitted."""

    world: World
    now: dict[str, Maybe]
    unit: dict[str, frozenset[str]]

    def copy(self) -> "Moment":
        """The same moment again, to go another way from."""
        return Moment(self.world, dict(self.now), dict(self.unit))

    def surely(self, key: str, states: Maybe) -> bool:
        """It is in one of these states, whatever is open."""
        return self.now[key] <= states

    def perhaps(self, key: str, states: Maybe) -> bool:
        """It may be in one of these states."""
        return bool(self.now[key] & states)

    def forget(self, key: str) -> None:
        """Nobody knows any more."""
        self.now[key] = UNKNOWN[self.world.kind(key)]

    def within(self, other: "Moment") -> bool:
        """Nothing may be true here that may not be true there."""
        return all(states <= other.now[key] for key, states in self.now.items()) and all(
            unit <= other.unit[key] for key, unit in self.unit.items()
        )


def one_body(moment: Moment, one: str, other: str, states: Maybe = IN) -> bool:
    """Two parts surely move as one piece: every part between them is fitted."""
    parts = between(moment.world, one, other)
    return parts is not None and all(moment.surely(part, states) for part in parts)


def may_be_one_body(moment: Moment, one: str, other: str) -> bool:
    """Two parts may move as one piece."""
    parts = between(moment.world, one, other)
    return parts is not None and all(moment.perhaps(part, IN) for part in parts)


def rides(moment: Moment, part: str, on: str, states: Maybe = HERE_AND_ON) -> bool:
    """A part surely goes where `on` goes: itself, and all between, fitted or lifted."""
    if part == on:
        return True
    world = moment.world
    return is_on(world, part, on) and all(
        moment.surely(each, states) for each in up_to(world, part, on)
    )


def may_ride(moment: Moment, part: str, on: str, states: Maybe = HERE_AND_ON) -> bool:
    """A part may go where `on` goes."""
    if part == on:
        return True
    world = moment.world
    return is_on(world, part, on) and all(
        moment.perhaps(each, states) for each in up_to(world, part, on)
    )


def holding(world: World, link: str) -> Maybe:
    """The states in which a link holds: in or half, a captive screw only in."""
    return IN if world.captive(link) else IN | HALF


def link_holds(moment: Moment, link: str) -> bool:
    """A link surely holds."""
    return moment.surely(link, holding(moment.world, link))


def surely_here(moment: Moment, key: str) -> bool:
    """Neither absent nor on an old unit."""
    return not moment.perhaps(key, GONE)


def on_the_device(moment: Moment, part: str, states: Maybe) -> bool:
    """The part and all that it is mounted on are surely in these states."""
    return all(moment.surely(each, states) for each in chain(moment.world, part))
