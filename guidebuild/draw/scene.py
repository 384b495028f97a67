"""What a view shows at a step: derived from the record, the passage through the step, and the labels."""

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass

from guidebuild.device.acts import REPLACING
from guidebuild.device.record import Device, View
from guidebuild.device.screw import Screw
from guidebuild.device.states import GONE, HOLDING, Kind, State
from guidebuild.device.things import Connector, Hole, Joint, Part, Store, Thing
from guidebuild.draw.look import End, HoleLook, HoleMark, Look, Reference, Scene
from guidebuild.draw.svg import Point
from guidebuild.draw.view import Drawn
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage

_AWAY = State.OUT | State.WORN | State.HALF


def worked(passage: Passage) -> tuple[str, ...]:
    """Keys of what hands touch on the device in a step, in order; what is renewed on the bench is not."""
    moves = (one.doing for one in passage.walked if isinstance(one.doing, Move))
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
        own = [key for key in shown if _own_view(device.things[key]) == id]
        rank = (len(shown), len(own), 1 / max(drawn[id].size))
        if shown and rank > most:
            best, most = id, rank
    return best


def shows(device: Device, view: View, drawn: Drawn, key: str) -> bool:
    """Whether a view can show a thing: it has its group, or its place."""
    thing = device.things[key]
    if drawn.box_of(thing.id) is not None:
        return True
    return isinstance(thing, Hole) and thing.xy is not None and _own_view(thing) == view.id


def _own_view(thing: Thing) -> str | None:
    return thing.view.text if isinstance(thing, Hole) and thing.view is not None else None


def scene_at(
    device: Device,
    view: View,
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
    now = [key for key in worked(passage) if only is None or key in only]
    moment = _Moment(device, view, drawn, passage, bits, frozenset(now))
    holes = tuple(moment.holes(orders or {}, screws or {}))
    ids = dict.fromkeys(layer.id for layer in drawn.layers if layer.id)
    looks = {id: moment.look(id) for id in ids}
    marked = {hole.key for hole in holes if hole.look is HoleLook.NOW}
    references = tuple(_references(device, drawn, now, labels, marked))
    return Scene(looks, holes, references)


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


@dataclass(frozen=True, slots=True)
class _Moment:
    """A step in some configurations; asks the snapshot before it."""

    device: Device
    view: View
    drawn: Drawn
    passage: Passage
    bits: int
    now: frozenset[str]

    def surely(self, key: str, states: State) -> bool:
        """Whether the thing is so in all the configurations meant, before the step."""
        return self.bits & self.passage.before.surely(key, states) == self.bits

    def look(self, id: str) -> Look:
        """How the group of this id is drawn: as the first of its things that is there."""
        keys = [key for key in self.device.names[id] if not self.surely(key, GONE)]
        if not keys:
            return Look.HIDDEN
        thing = self.device.things[keys[0]]
        if isinstance(thing, Hole):
            return Look.HIDDEN  # holes are drawn by the tool, not by the view
        if self.now & set(keys):
            return self._live_or(thing, Look.NOW)
        if self._carried_off(thing):
            return Look.HIDDEN
        if thing.key in self.at_hand or not self.surely(thing.key, _AWAY):
            return self._live_or(thing, Look.FITTED)
        return self._gone(thing)

    def _live_or(self, thing: Thing, look: Look) -> Look:
        if not isinstance(thing, Store) or thing.kind is Kind.POWER:
            return look
        if not self.surely(thing.key, State.IN):
            return look if look is Look.NOW else Look.HIDDEN
        return Look.LIVE_NOW if look is Look.NOW else Look.LIVE

    def _gone(self, thing: Thing) -> Look:
        """An open plug shows its pins; one of a lead from outside went away with the lead."""
        if isinstance(thing, Connector):
            return Look.AWAY if self._from_outside(thing) else Look.OPEN
        return Look.HIDDEN if isinstance(thing, Joint) else Look.AWAY

    def _from_outside(self, plug: Connector) -> bool:
        keys = [key for end in plug.ends for key in self.device.names.get(end.text, ())]
        return any(isinstance(p := self.device.things[key], Part) and p.outside for key in keys)

    def _carried_off(self, thing: Thing) -> bool:
        """Whether the part on which a thing sits is away, so that the thing went with it."""
        return any(self._elsewhere(key) for key in self._carriers(thing, 0))

    def _elsewhere(self, key: str) -> bool:
        """Whether a part is away and this step has nothing to do with it, on the device or on the bench."""
        return key not in self.at_hand and self.surely(key, _AWAY | GONE)

    @property
    def at_hand(self) -> frozenset[str]:
        """Parts that are worked on, and those on which this step works something."""
        things = [self.device.things[key] for key in self.now]
        return self.now | {key for thing in things for key in self._carriers(thing, 0)}

    def _carriers(self, thing: Thing, depth: int) -> Iterator[str]:
        for id in _sits_on(thing):
            for key in self.device.names.get(id, ())[:1]:
                part = self.device.things[key]
                if isinstance(part, Part) and depth < 20 and key != self.device.base:
                    yield key
                    yield from self._carriers(part, depth + 1)

    def holes(self, orders: Mapping[str, int], screws: Mapping[str, Screw]) -> Iterator[HoleMark]:
        """Every hole that this view places and nothing covers."""
        for hole in self.device.holes:
            at = self._place(hole)
            if at is None or self.surely(hole.key, GONE):
                continue
            screw = screws.get(hole.key) or (hole.screw[0].value if hole.screw else None)
            if hole.key in self.now:
                yield HoleMark(hole.key, at, screw, HoleLook.NOW, orders.get(hole.key))
            elif not self._out_of_sight(hole):
                full = self.passage.before.perhaps(hole.key, HOLDING) & self.bits
                yield HoleMark(hole.key, at, screw, HoleLook.SCREW if full else HoleLook.EMPTY)

    def _place(self, hole: Hole) -> Point | None:
        box = self.drawn.box_of(hole.id)
        if box is not None:
            return box.centre
        if hole.xy is None or _own_view(hole) != self.view.id:
            return None
        return float(hole.xy[0]), float(hole.xy[1])

    def _out_of_sight(self, hole: Hole) -> bool:
        """Gone with the part that it goes into, or behind a part that this view shows as fitted."""
        into = hole.ends[-1].text if hole.ends else ""
        keys = self.device.names.get(into, ())[:1]
        if any(k != self.device.base and self._elsewhere(k) for k in keys):
            return True
        covers = [key for said in hole.behind for key in self.device.names.get(said.text, ())[:1]]
        return any(
            self.drawn.box_of(self.device.things[key].id) is not None
            and self.surely(key, State.IN)
            and key not in self.now
            for key in covers
        )


def _sits_on(thing: Thing) -> tuple[str, ...]:
    """Ids of the part where a thing sits (design: place)."""
    match thing:
        case Part(host=host):
            return (host.text,) if host else ()
        case Connector(ends=ends):
            return (ends[-1].text,) if ends else ()
        case Joint(ends=ends) | Hole(ends=ends):
            return (ends[0].text,) if ends else ()
        case Store(inside=inside):
            return (inside.text,) if inside else ()
    return ()
