"""What an opening act needs first: the same questions that the proof asks, asked of the record at rest.

A reason is a list of which one thing must be open, and the configurations in which it counts.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.ends import is_soft
from guidebuild.device.layout import Layout
from guidebuild.device.record import POWER
from guidebuild.device.things import Connector, Joint, Part, Store
from guidebuild.plan.openings import Opening, can_lift, links_across


@dataclass(frozen=True, slots=True)
class Reason:
    """One of `any_of` (keys) is open before. `why`: hidden, held, guarded, fed, drained, lifted."""

    why: str
    any_of: tuple[str, ...]
    where: int


def reasons(layout: Layout, opening: Opening) -> Iterator[Reason]:
    """All that must be open before the first of its things is; screws of one opening have the same reasons."""
    key = opening.keys[0]
    thing = layout.device.things[key]
    if key == POWER:
        return
    yield from _reach(layout, _worked_at(layout, opening))
    for guard, where in layout.guarding.over(key):
        yield Reason("guarded", _opened_by(layout, guard), where)
    match thing:
        case Connector():
            yield from _dead(layout, thing)
        case Store():
            yield from _drained(layout, thing)
        case Part():
            yield from _freed(layout, opening, key)
        case _:
            pass


def at_hand(layout: Layout, key: str) -> Iterator[Reason]:
    """What must be open before a thing can be looked at, cleaned or set: what hides it, what guards it."""
    yield from _reach(layout, key)
    for guard, where in layout.guarding.over(key):
        yield Reason("guarded", _opened_by(layout, guard), where)


def _worked_at(layout: Layout, opening: Opening) -> str:
    """A store with a drain is emptied at the drain."""
    thing = layout.device.things[opening.keys[0]]
    if isinstance(thing, Store) and thing.through is not None:
        ways = layout.presence.of([thing.through])
        return ways[0][0] if ways else thing.key
    return thing.key


def _reach(layout: Layout, key: str) -> Iterator[Reason]:
    """Each cover is open, or something between it and the place of the hand is."""
    for cover in layout.covers.of(key):
        yield Reason("hidden", (cover.part, *cover.path.parts), cover.path.where)


def _opened_by(layout: Layout, key: str) -> tuple[str, ...]:
    """What opens a guard: its own act, or that of something that empties it; of a seal, a part that leaves it."""
    thing = layout.device.things[key]
    if isinstance(thing, Joint) and thing.joint == "seal":
        parts = (part.key for part in layout.device.parts)
        return tuple(part for part in parts if thing in links_across(layout, part))
    if not isinstance(thing, Store):
        return (key,)
    found = [key]
    for one, _ in layout.presence.of(thing.emptied_by):
        found += [one] if isinstance(layout.device.things[one], Store) else _opened_by(layout, one)
    return tuple(dict.fromkeys(found))


def _freed(layout: Layout, opening: Opening, part: str) -> Iterator[Reason]:
    """Each link to what it does not carry; of a part that was lifted before, only the soft ones are left."""
    lifts = can_lift(layout, layout.device.part(part))
    if lifts and opening.verb is Verb.REMOVE:
        yield Reason("lifted", (part,), opening.where)
    where = layout.presence.where
    for link in links_across(layout, part):
        soft = is_soft(link)
        seal = isinstance(link, Joint) and link.joint == "seal"
        if not seal and (not lifts or soft == (opening.verb is Verb.REMOVE)):
            yield Reason("held", (link.key,), layout.presence.both(where[link.key], opening.where))


def _drained(layout: Layout, store: Store) -> Iterator[Reason]:
    for key, where in layout.presence.of([store.through] if store.through else []):
        yield Reason("drained", _opened_by(layout, key), where)
    for key, where in layout.presence.of(store.filled_by):
        yield Reason("filled", _opened_by(layout, key), where)


def _dead(layout: Layout, plug: Connector) -> Iterator[Reason]:
    """Power is off; or each source is open, or something on every way from it to the plug."""
    if plug.live == "off":
        yield Reason("live", (POWER,), layout.everywhere)
    if plug.live != "unfed":
        return
    for source in layout.sources:
        if source.key != plug.key:
            cuts = _cuts(layout, source, plug)
            if cuts:
                yield Reason("fed", cuts, layout.presence.where[source.key])


def _cuts(layout: Layout, source: Connector, plug: Connector) -> tuple[str, ...]:
    """The source, and each plug without which it feeds the other no more; nothing where it never does."""
    others = [one for one in layout.device.connectors if one.key not in (source.key, plug.key)]
    if not _feeds(layout, source, plug, others):
        return ()
    between = (
        one.key
        for one in others
        if not _feeds(layout, source, plug, [rest for rest in others if rest is not one])
    )
    return source.key, *between


def _feeds(layout: Layout, source: Connector, plug: Connector, over: list[Connector]) -> bool:
    live = {end for end, _ in layout.ends.of(source)}
    goal = {end for end, _ in layout.ends.of(plug)}
    grown = True
    while grown and not live & goal:
        ends = [{end for end, _ in layout.ends.of(one)} for one in over]
        more = {end for each in ends if live & each for end in each}
        grown = not more <= live
        live |= more
    return bool(live & goal)
