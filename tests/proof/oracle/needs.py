"""What an act needs. Each question answers with what is to blame, or None where nothing is surely wrong."""

from collections.abc import Callable
from typing import TypeAlias

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER
from guidebuild.device.states import Kind
from guidebuild.device.things import Connector, Store
from guidebuild.proof.mistake import Need
from tests.proof.oracle.current import feeding
from tests.proof.oracle.deeds import Deed
from tests.proof.oracle.guards import guarded_by, named_by
from tests.proof.oracle.hidden import hiding
from tests.proof.oracle.moment import Moment, holding, link_holds, one_body, rides, surely_here
from tests.proof.oracle.sets import GONE, HALF, HERE_AND_ON, IN, LEFT, NOT_IN, Maybe
from tests.proof.oracle.table import ON_THE_BENCH, OPENS_ON_THE_OLD_UNIT, TABLE
from tests.proof.oracle.tree import between, ends, host, is_on, pairs, up_to
from tests.proof.oracle.world import World

Blames: TypeAlias = set[str]
Question: TypeAlias = Callable[[Moment, Deed], Blames | None]

CLOSES_A_LINK = {Verb.START, Verb.TIGHTEN, Verb.REFIT, Verb.RECONNECT, Verb.CLOSE}
TAKES_AWAY = {Verb.LIFT, Verb.REMOVE, Verb.EXCHANGE, Verb.RENEW}
LINKS = {Kind.FASTENER, Kind.CONNECTOR, Kind.JOINT}


def first_unmet(moment: Moment, deed: Deed) -> tuple[Need, Blames] | None:
    """The first need that surely fails, in the order in which they are asked."""
    for need, question in QUESTIONS.items():
        blames = question(moment, deed)
        if blames is not None:
            return need, blames
    return None


def kind_of(moment: Moment, deed: Deed) -> Kind:
    return moment.world.kind(deed.thing)


def begins(moment: Moment, deed: Deed) -> Maybe:
    """The states that the act starts from; what is on an old unit may still be opened there."""
    states = TABLE[kind_of(moment, deed), deed.verb].begins
    if deed.verb is Verb.START and moment.world.captive(deed.thing):
        states |= HALF
    return states | LEFT if deed.verb in OPENS_ON_THE_OLD_UNIT else states


def here(moment: Moment, deed: Deed) -> Blames | None:
    if moment.perhaps(deed.thing, begins(moment, deed)):
        return None
    return set() if moment.surely(deed.thing, GONE) else None


def state(moment: Moment, deed: Deed) -> Blames | None:
    return None if moment.perhaps(deed.thing, begins(moment, deed)) else set()


def old_unit(moment: Moment, deed: Deed) -> Blames | None:
    if deed.verb not in (Verb.EXCHANGE, Verb.RENEW):
        return None
    return set() if moment.unit.get(deed.thing) == frozenset({"hand"}) else None


def surely_usual(moment: Moment, deed: Deed) -> bool:
    """It is surely not on an old unit."""
    return not moment.perhaps(deed.thing, LEFT)


def surely_left(moment: Moment, deed: Deed) -> bool:
    return moment.surely(deed.thing, LEFT)


def reach(moment: Moment, deed: Deed) -> Blames | None:
    if deed.verb in ON_THE_BENCH or kind_of(moment, deed) is Kind.POWER:
        return None
    worked = deed.thing
    thing = moment.world.things[deed.thing]
    if isinstance(thing, Store) and deed.verb is Verb.RELEASE and through(moment.world, thing):
        worked = through(moment.world, thing)[0]
    if surely_usual(moment, deed):
        return hiding(moment, worked) or None
    if surely_left(moment, deed):
        return hiding(moment, worked, LEFT) or None
    return None


def through(world: World, store: Store) -> list[str]:
    """What a store is emptied through, where that exists."""
    return [] if store.through is None else world.keys([store.through])


def safe(moment: Moment, deed: Deed) -> Blames | None:
    if deed.verb in ON_THE_BENCH or not surely_usual(moment, deed):
        return None
    return {
        guard
        for guard in moment.world.things
        if moment.surely(guard, IN) and deed.thing in guarded_by(moment.world, guard)
    } or None


def dead(moment: Moment, deed: Deed) -> Blames | None:
    thing = moment.world.things[deed.thing]
    if not isinstance(thing, Connector) or not surely_usual(moment, deed):
        return None
    match thing.live:
        case "unfed":
            return feeding(moment, deed.thing) or None
        case "off":
            return {POWER} if moment.surely(POWER, IN) else None
        case _:
            return None


def free(moment: Moment, deed: Deed) -> Blames | None:
    if kind_of(moment, deed) is not Kind.PART or deed.verb not in TAKES_AWAY:
        return None
    if surely_usual(moment, deed):
        return {
            link.key
            for link in moment.world.links()
            if _counts(moment.world, link.key, deed.verb)
            and link_holds(moment, link.key)
            and _ties(moment, link.key, deed.thing)
        } or None
    if surely_left(moment, deed) and deed.verb is Verb.REMOVE:
        return {
            link.key
            for link in moment.world.links()
            if _counts(moment.world, link.key, deed.verb)
            and moment.surely(link.key, LEFT | holding(moment.world, link.key))
            and _ties_on_the_old_unit(moment, link.key, deed.thing)
        } or None
    return None


def _counts(world: World, link: str, verb: Verb) -> bool:
    """Lifting leaves plugs and hinges; a seal gives way to the part that leaves."""
    if world.joint_is(link, "seal"):
        return verb not in (Verb.LIFT, Verb.REMOVE)
    return verb is not Verb.LIFT or not world.soft(link)


def _ties(moment: Moment, link: str, part: str) -> bool:
    """It ties what surely rides on the part to what surely does not, and is surely here."""
    tied = ends(moment.world, link)
    return any(rides(moment, end, part) for end in tied) and any(
        surely_here(moment, end) and _surely_stays(moment, end, part, HERE_AND_ON) for end in tied
    )


def _ties_on_the_old_unit(moment: Moment, link: str, part: str) -> bool:
    tied = ends(moment.world, link)
    return any(rides(moment, end, part, LEFT) for end in tied) and any(
        _surely_stays(moment, end, part, LEFT) for end in tied
    )


def _surely_stays(moment: Moment, end: str, part: str, states: Maybe) -> bool:
    world = moment.world
    if end == part:
        return False
    if not is_on(world, end, part):
        return True
    return any(not moment.perhaps(each, states) for each in up_to(world, end, part))


def met(moment: Moment, deed: Deed) -> Blames | None:
    world, kind = moment.world, kind_of(moment, deed)
    if surely_left(moment, deed):
        return None
    if kind is Kind.PART and deed.verb in (Verb.REFIT, Verb.LOWER, Verb.OFFER):
        below = host(world, deed.thing)
        return {below} if below is not None and moment.surely(below, GONE) else None
    if kind not in LINKS or deed.verb not in CLOSES_A_LINK:
        return None
    if world.soft(deed.thing):
        return {end for end in ends(world, deed.thing) if moment.surely(end, GONE)} or None
    return _apart(moment, deed.thing) or None


def _apart(moment: Moment, link: str) -> Blames:
    """The parts that surely keep a rigid link's ends from being one body."""
    ways = [between(moment.world, *two) for two in pairs(moment.world, link)]
    if None in ways:  # separate trees: it is enough that all ends are here
        return {end for end in ends(moment.world, link) if moment.surely(end, GONE)}
    return {part for way in ways for part in way or () if not moment.perhaps(part, IN)}


def shut(moment: Moment, deed: Deed) -> Blames | None:
    thing, world = moment.world.things[deed.thing], moment.world
    if surely_left(moment, deed):
        return None
    closes_link = thing.kind in LINKS and deed.verb in CLOSES_A_LINK
    if not closes_link and deed.verb is not Verb.RESTORE:
        return None
    open_still = {key for key in named_by(world, deed.thing) if moment.surely(key, NOT_IN)}
    if isinstance(thing, Store):
        open_still |= {key for key in through(world, thing) if moment.surely(key, NOT_IN)}
    return open_still or None


def drain(moment: Moment, deed: Deed) -> Blames | None:
    thing, world = moment.world.things[deed.thing], moment.world
    if not isinstance(thing, Store) or deed.verb is not Verb.RELEASE:
        return None
    if not surely_usual(moment, deed):  # what may be on an old unit may have been emptied there
        return None
    stopped = {key for key in through(world, thing) if link_holds(moment, key)}
    return stopped | {key for key in world.keys(thing.filled_by) if moment.surely(key, IN)} or None


def lies_between(moment: Moment, deed: Deed) -> Blames | None:
    world = moment.world
    if deed.verb is not Verb.RENEW or not world.joint_is(deed.thing, "seal", "adhesive", "film"):
        return None
    two = pairs(world, deed.thing)
    if not two or not all(one_body(moment, one, other) for one, other in two):
        return None
    return {part for one, other in two for part in between(world, one, other) or ()}


def source(moment: Moment, deed: Deed) -> Blames | None:
    sources = set(moment.world.sources())
    if deed.verb is not Verb.SWITCH_ON or not sources:
        return None
    return sources if not any(moment.perhaps(each, IN) for each in sources) else None


QUESTIONS: dict[Need, Question] = {
    Need.HERE: here,
    Need.STATE: state,
    Need.OLD_UNIT: old_unit,
    Need.REACH: reach,
    Need.SAFE: safe,
    Need.DEAD: dead,
    Need.FREE: free,
    Need.MET: met,
    Need.SHUT: shut,
    Need.DRAIN: drain,
    Need.BETWEEN: lies_between,
    Need.SOURCE: source,
}
