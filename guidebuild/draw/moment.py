"""How everything of a view is drawn at one moment, from the states before it and from what is worked on."""

from collections.abc import Iterator, Mapping

from guidebuild.device.screw import Screw
from guidebuild.device.states import GONE, HOLDING, State
from guidebuild.device.things import Connector, Hole, Joint
from guidebuild.draw.look import HoleLook, HoleMark, Look
from guidebuild.draw.sight import Place, Seen, Sight

# plain integers: an enum's own operators are slow, and a moment asks thousands of times
_AWAY = int(State.OUT | State.WORN | State.HALF)
_GONE, _IN, _HOLDING = int(GONE), int(State.IN), int(HOLDING)


class Moment:
    """`states`: by key, all states in which the thing may be in any of the configurations meant."""

    def __init__(self, seen: Sight, states: Mapping[str, int], now: tuple[str, ...]) -> None:
        self._sight = seen
        self._states = states
        self._now = frozenset(now)
        # parts that are worked on, and those on which this step works something
        self._at_hand = self._now | {part for key in now for part in seen.carriers[key]}

    def _surely(self, key: str, states: int) -> bool:
        """Whether the thing is so in all the configurations meant."""
        return not self._states[key] & ~states

    def looks(self) -> dict[str, Look]:
        """How the group of each id is drawn."""
        return {id: self._look(things) for id, things in self._sight.ids.items()}

    def _look(self, things: tuple[Seen, ...]) -> Look:
        """As the first of its things that is there."""
        there = [one for one in things if not self._surely(one.key, _GONE)]
        if not there:
            return Look.HIDDEN
        first = there[0]
        if isinstance(first.thing, Hole):
            return Look.HIDDEN  # holes are drawn by the tool, not by the view
        if any(one.key in self._now for one in there):
            return self._live_or(first, Look.NOW)
        if any(map(self._elsewhere, first.carriers)):
            return Look.HIDDEN  # it went with the part on which it sits
        if first.key in self._at_hand or not self._surely(first.key, _AWAY):
            return self._live_or(first, Look.FITTED)
        return _gone(first)

    def _live_or(self, one: Seen, look: Look) -> Look:
        if not one.store:
            return look
        if not self._surely(one.key, _IN):
            return look if look is Look.NOW else Look.HIDDEN
        return Look.LIVE_NOW if look is Look.NOW else Look.LIVE

    def _elsewhere(self, key: str) -> bool:
        """Whether a part is away and this step has nothing to do with it, on the device or on the bench."""
        return key not in self._at_hand and self._surely(key, _AWAY | _GONE)

    def holes(self, orders: Mapping[str, int], screws: Mapping[str, Screw]) -> Iterator[HoleMark]:
        """Every hole that this view places and nothing covers."""
        for n, place in enumerate(self._sight.places):
            hole, at = place.hole, place.at
            if self._surely(hole.key, _GONE):
                continue
            screw = screws.get(hole.key) or (hole.screw[0].value if hole.screw else None)
            if hole.key in self._now:
                yield HoleMark(hole.key, at, screw, HoleLook.NOW, orders.get(hole.key), n)
            elif not self._out_of_sight(place):
                full = self._states[hole.key] & _HOLDING
                look = HoleLook.SCREW if full else HoleLook.EMPTY
                yield HoleMark(hole.key, at, screw, look, place=n)

    def _out_of_sight(self, place: Place) -> bool:
        """Gone with the part that it goes into, or behind a part that this view shows as fitted."""
        if place.into is not None and self._elsewhere(place.into):
            return True
        return any(self._surely(key, _IN) and key not in self._now for key in place.covers)


def _gone(one: Seen) -> Look:
    """An open plug shows its pins; one of a lead from outside went away with the lead."""
    if isinstance(one.thing, Connector):
        return Look.AWAY if one.from_outside else Look.OPEN
    return Look.HIDDEN if isinstance(one.thing, Joint) else Look.AWAY
