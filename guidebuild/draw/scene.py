"""What a view shows at a step: derived from the record, the passage through the step, and the labels."""

from collections.abc import Collection, Iterator, Mapping

from guidebuild.device.acts import REPLACING
from guidebuild.device.record import Device, View
from guidebuild.device.screw import Screw
from guidebuild.device.states import GONE, HOLDING, State
from guidebuild.device.things import Connector, Hole, Joint, Part
from guidebuild.draw.look import End, HoleLook, HoleMark, Look, Reference, Scene
from guidebuild.draw.sight import Place, Seen, Sight, own_view
from guidebuild.draw.view import Drawn
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage

# plain integers: an enum's own operators are slow, and a scene asks thousands of times
_AWAY = int(State.OUT | State.WORN | State.HALF)
_GONE, _IN = int(GONE), int(State.IN)


def worked(passage: Passage, where: int | None = None) -> tuple[str, ...]:
    """Keys of what hands touch on the device in a step, in order; what is renewed on the bench is not.

    `where`: only what is done in some of these configurations.
    """
    done = (one.doing for one in passage.walked if where is None or one.where & where)
    moves = (one for one in done if isinstance(one, Move))
    found = [move.thing for move in moves if move.verb not in REPLACING]
    return tuple(dict.fromkeys(found))


def view_for(device: Device, passage: Passage, drawn: Mapping[str, Drawn]) -> str | None:
    """The view (by id) that shows most of the step's work; None where none shows any.

    Among equals the one on which the record places the screws wins, then the one that shows it largest.
    """
    keys = worked(passage)
    best, most = None, (0, 0, 0.0)
    for id, view in device.views.items():
        if id not in drawn:
            continue
        shown = [key for key in keys if shows(device, view, drawn[id], key)]
        own = [key for key in shown if own_view(device.things[key]) == id]
        rank = (len(shown), len(own), 1 / max(drawn[id].size))
        if shown and rank > most:
            best, most = id, rank
    return best


def shows(device: Device, view: View, drawn: Drawn, key: str) -> bool:
    """Whether a view can show a thing: it has its group, or its place."""
    thing = device.things[key]
    if drawn.box_of(thing.id) is not None:
        return True
    return isinstance(thing, Hole) and thing.xy is not None and own_view(thing) == view.id


def scene_at(
    device: Device,
    drawn: Drawn,
    passage: Passage,
    labels: Mapping[str, str],
    where: int | None = None,
    only: Collection[str] | None = None,
    orders: Mapping[str, int] | None = None,
    screws: Mapping[str, Screw] | None = None,
) -> Scene:
    """The scene of a step in the configurations `where` (all in which it is shown, if None).

    `labels` maps keys to what stands on their leaders; `only` keeps the marks to some of the worked keys (a
    face of the bench); `orders` maps holes' keys to their place in a tightening sequence; `screws` to the
    screws that belong in them there, where a record has several.
    """
    bits = passage.shown if where is None else where
    now = [key for key in worked(passage, where) if only is None or key in only]
    moment = _Moment(drawn.sight, passage, bits, now)
    holes = tuple(moment.holes(orders or {}, screws or {}))
    looks = moment.looks()
    marked = {hole.key for hole in holes if hole.look is HoleLook.NOW}
    references = tuple(_references(device, drawn, now, labels, marked))
    return Scene(looks, holes, references, len(drawn.sight.places))


def _references(
    device: Device, drawn: Drawn, now: list[str], labels: Mapping[str, str], marked: set[str]
) -> Iterator[Reference]:
    for key in now:
        thing, label = device.things[key], labels.get(key)
        if label is None:
            continue
        if key in marked:
            yield Reference(label, key, End.ARROW)
        elif not isinstance(thing, Hole) and drawn.box_of(thing.id) is not None:
            end = End.DOT if isinstance(thing, Part) else End.ARROW
            yield Reference(label, thing.id, end)


class _Moment:
    """A step in some configurations; asks the snapshot before it."""

    def __init__(self, seen: Sight, passage: Passage, bits: int, now: Collection[str]) -> None:
        self._sight = seen
        self._before = passage.before
        self._bits = bits
        self._now = frozenset(now)
        # parts that are worked on, and those on which this step works something
        self._at_hand = self._now | {part for key in now for part in seen.carriers[key]}

    def _surely(self, key: str, states: int) -> bool:
        """Whether the thing is so in all the configurations meant, before the step."""
        value = self._before.values[key]
        if isinstance(value, int) and self._bits & self._before.everywhere == self._bits:
            return not value & ~states
        return self._bits & self._before.surely(key, State(states)) == self._bits

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
                full = self._before.perhaps(hole.key, HOLDING) & self._bits
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
