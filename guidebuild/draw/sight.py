"""What of a view's scenes the record alone decides, worked out once: a scene is asked for at every step."""

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass

from guidebuild.device.record import Device, View
from guidebuild.device.states import Kind
from guidebuild.device.things import Connector, Hole, Joint, Part, Store, Thing
from guidebuild.draw.svg import Box, Point

_DEEP = 20  # parts on parts


@dataclass(frozen=True, slots=True)
class Seen:
    """A thing that the view draws; `carriers`: keys of the parts on which it sits, one on the other."""

    key: str
    thing: Thing
    carriers: tuple[str, ...]
    store: bool
    from_outside: bool  # a plug that goes away with its lead


@dataclass(frozen=True, slots=True)
class Place:
    """A hole at `at` on the view; it goes `into` a part (key), and `covers` (keys) may hide it."""

    hole: Hole
    at: Point
    into: str | None
    covers: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Sight:
    """`ids`: what each id that the view draws may stand for; `carriers` of every thing, by key.

    `keys`: everything whose state tells one drawing of the view from another.
    """

    ids: dict[str, tuple[Seen, ...]]
    places: tuple[Place, ...]
    carriers: dict[str, tuple[str, ...]]
    keys: tuple[str, ...]
    things: Mapping[str, Thing]


def sight(device: Device, view: View, ids: Collection[str], boxes: Mapping[str, Box]) -> Sight:
    """Of one view of one record: it draws these ids, with these boxes round what is no lettering."""
    carriers = {
        key: tuple(dict.fromkeys(_carriers(device, thing, 0)))
        for key, thing in device.things.items()
    }
    seen = {id: tuple(_seen(device, key, carriers) for key in device.names[id]) for id in ids}
    places = tuple(_places(device, view, boxes))
    return Sight(seen, places, carriers, tuple(dict.fromkeys(_keys(seen, places))), device.things)


def _keys(ids: Mapping[str, tuple[Seen, ...]], places: tuple[Place, ...]) -> Iterator[str]:
    for things in ids.values():
        for one in things:
            yield from (one.key, *one.carriers)
    for place in places:
        yield from (place.hole.key, *place.covers)
        if place.into is not None:
            yield place.into


def _seen(device: Device, key: str, carriers: dict[str, tuple[str, ...]]) -> Seen:
    thing = device.things[key]
    store = isinstance(thing, Store) and thing.kind is not Kind.POWER
    outside = isinstance(thing, Connector) and _from_outside(device, thing)
    return Seen(key, thing, carriers[key], store, outside)


def _from_outside(device: Device, plug: Connector) -> bool:
    keys = [key for end in plug.ends for key in device.names.get(end.text, ())]
    return any(isinstance(p := device.things[key], Part) and p.outside for key in keys)


def _carriers(device: Device, thing: Thing, depth: int) -> Iterator[str]:
    for id in _sits_on(thing):
        for key in device.names.get(id, ())[:1]:
            part = device.things[key]
            if isinstance(part, Part) and depth < _DEEP and key != device.base:
                yield key
                yield from _carriers(device, part, depth + 1)


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


def _places(device: Device, view: View, boxes: Mapping[str, Box]) -> Iterator[Place]:
    """Every hole that this view places."""
    for hole in device.holes:
        at = _place(hole, view, boxes)
        if at is None:
            continue
        into = device.names.get(hole.ends[-1].text, ())[:1] if hole.ends else ()
        covers = tuple(
            key
            for said in hole.behind
            for key in device.names.get(said.text, ())[:1]
            if device.things[key].id in boxes
        )
        yield Place(hole, at, next((key for key in into if key != device.base), None), covers)


def _place(hole: Hole, view: View, boxes: Mapping[str, Box]) -> Point | None:
    """Where the view draws a hole, or where the record places it on the view."""
    if hole.id in boxes:
        return boxes[hole.id].centre
    if hole.xy is None or own_view(hole) != view.id:
        return None
    return float(hole.xy[0]), float(hole.xy[1])


def own_view(thing: Thing) -> str | None:
    """The view on which the record places a hole."""
    return thing.view.text if isinstance(thing, Hole) and thing.view is not None else None
