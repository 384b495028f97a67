"""Every order tried, one act at a time, by the plain simulator of one configuration: nothing of the planner is used.

Parts, screws, plugs and clips are opened one by one; which of them are parts that may be lifted is all that the
planner and this have in common.
"""

from dataclasses import dataclass, replace
from decimal import Decimal
from heapq import heappop, heappush

from guidebuild.device.acts import Verb
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole, Joint, Link, Part, Thing
from guidebuild.guide.guide import Goal, Guide
from guidebuild.guide.step import Step
from guidebuild.source.said import Said
from tests.proof.fuzz.devices import device as random_device
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.ink import Ink
from tests.proof.fuzz.wishes import Wish, written
from tests.proof.oracle.deeds import Deed
from tests.proof.oracle.effects import do
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.needs import first_unmet
from tests.proof.oracle.start import start
from tests.proof.oracle.world import World

TOOLS = ("TX6", "TX8", "spudger")


def toy(dice: Dice) -> Device:
    """A random device with tools, that starts closed in every detail."""
    ink = Ink()
    made = random_device(dice, ink, [])
    things = {key: _closed(dice, ink, thing) for key, thing in made.things.items()}
    return replace(made, things=things)


def _closed(dice: Dice, ink: Ink, thing: Thing) -> Thing:
    thing = replace(thing, starts=None)
    if isinstance(thing, Part):
        return replace(thing, opens_to=dice.pick([None, None, Decimal(90)]))
    if isinstance(thing, Link) and (isinstance(thing, Hole) or dice.often(40)):
        return replace(thing, with_=(ink.said(dice.pick(TOOLS)),))
    return thing


@dataclass(frozen=True)
class Deal:
    """One act that could be done: what, with which tool, at what cost besides changing tools."""

    deed: Deed
    tool: str | None


OPENS = {
    Kind.PART: (Verb.LIFT, Verb.REMOVE),
    Kind.FASTENER: (Verb.REMOVE,),
    Kind.CONNECTOR: (Verb.DISCONNECT,),
    Kind.JOINT: (Verb.RELEASE,),
    Kind.STORE: (Verb.RELEASE,),
    Kind.POWER: (Verb.SWITCH_OFF,),
}


def world_of(device: Device) -> World:
    ink = Ink()
    guide = Guide(
        id="g", path="fuzz.md", span=ink.span(), title=ink.said("g"),
        goal=Goal("inspect", (), ink.span()),
    )  # fmt: skip
    return World(guide, device, {})


def deals(world: World, liftable: set[str]) -> list[Deal]:
    """Every opening act that the device has."""
    found = []
    for key, thing in world.things.items():
        for verb in OPENS[thing.kind]:
            seal = isinstance(thing, Joint) and thing.joint == "seal"
            if not seal and (verb is not Verb.LIFT or key in liftable):
                found.append(_deal(world, key, verb))
    return found


def _deal(world: World, key: str, verb: Verb) -> Deal:
    ink = Ink()
    verb = Verb.LOOSEN if world.captive(key) else verb
    step = Step(id="s", title=ink.said("s"), span=ink.span(), body=ink.span())
    act = written(ink, Wish(world.kind(key), verb, (key,)))
    thing = world.things[key]
    tools = thing.with_ if isinstance(thing, Link) else ()
    return Deal(Deed(verb, key, act, step, Said(key, ink.span())), tools[0].text if tools else None)


def stumbles(device: Device, order: list[tuple[Verb, str]], liftable: set[str]) -> list[str]:
    """The acts of an order that can't be done when their turn comes."""
    world = world_of(device)
    hands = {(one.deed.verb, one.deed.thing): one.deed for one in deals(world, liftable)}
    moment, found = start(world), []
    for act in order:
        unmet = first_unmet(moment, hands[act])
        if unmet is not None:
            found.append(f"{act}: {unmet}")
        do(moment, hands[act], None)
    return found


def least(device: Device, part: str, liftable: set[str]) -> int | None:
    """Parts that come off and changes of tool, for the cheapest of all orders; None where there is none."""
    world = world_of(device)
    hands = deals(world, liftable)
    goal = next(
        at
        for at, one in enumerate(hands)
        if one.deed.thing == part and one.deed.verb is Verb.REMOVE
    )
    begun = start(world)
    moments: dict[frozenset[int], Moment] = {frozenset(): begun}
    open_: dict[frozenset[int], list[tuple[int, frozenset[int]]]] = {}
    waiting: list[tuple[int, int, str, frozenset[int]]] = [(0, 0, "", frozenset())]
    seen: set[tuple[str, frozenset[int]]] = set()
    count = 0
    while waiting:
        cost, _, tool, done = heappop(waiting)
        if goal in done:
            return cost
        if (tool, done) in seen:
            continue
        seen.add((tool, done))
        if done not in open_:
            open_[done] = list(_next(hands, moments, done))
        for at, after in open_[done]:
            count += 1
            more = _cost(hands, done, at) + bool(hands[at].tool and tool and hands[at].tool != tool)
            heappush(waiting, (cost + more, count, hands[at].tool or tool, after))
    return None


def _next(
    hands: list[Deal], moments: dict[frozenset[int], Moment], done: frozenset[int]
) -> list[tuple[int, frozenset[int]]]:
    found = []
    for at, one in enumerate(hands):
        if at not in done and first_unmet(moments[done], one.deed) is None:
            after = done | {at}
            if after not in moments:
                moment = moments[done].copy()
                do(moment, one.deed, None)
                moments[after] = moment
            found.append((at, after))
    return found


def _cost(hands: list[Deal], done: frozenset[int], at: int) -> int:
    """A part costs once, lifted or taken off."""
    deed = hands[at].deed
    if deed.verb not in (Verb.LIFT, Verb.REMOVE) or hands[at].deed.act.kind is not Kind.PART:
        return 0
    return int(all(hands[one].deed.thing != deed.thing for one in done))
