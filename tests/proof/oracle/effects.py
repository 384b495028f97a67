"""What an act does, needs met or not: it is taken as done."""

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole
from guidebuild.device.units import unit_of
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.proof.mistake import Need
from tests.proof.oracle.arriving import arrives, left_over
from tests.proof.oracle.conditions import first_that_holds
from tests.proof.oracle.deeds import Deed
from tests.proof.oracle.doubt import doubt
from tests.proof.oracle.joints import break_seals, close_joints, renew_joints
from tests.proof.oracle.leaving import bring_over, leaves
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import GONE, HALF, IN, LEFT, OUT, WORN, Maybe
from tests.proof.oracle.table import TABLE

FILLS = {
    Verb.RECONNECT,
    Verb.CLOSE,
    Verb.REFIT,
    Verb.TIGHTEN,
    Verb.LOWER,
    Verb.RESTORE,
    Verb.SWITCH_ON,
}
EMPTIES = {
    Verb.REMOVE,
    Verb.DISCONNECT,
    Verb.RELEASE,
    Verb.LIFT,
    Verb.EXCHANGE,
    Verb.RENEW,
    Verb.SWITCH_OFF,
}


def do(moment: Moment, deed: Deed, unmet: tuple[Need, set[str]] | None) -> set[str]:
    """Changes the moment; returns what was left over by it."""
    sources = {key: moment.now[key] for key in moment.world.sources()}
    doubt(moment, unmet[1] if unmet else ())
    before = moment.copy()
    closed, opened = {deed.thing: True}, {deed.thing: True}
    spare = set()
    match kind_of(moment, deed), deed.verb:
        case Kind.PART, Verb.REMOVE:
            opened |= break_seals(moment, before, deed.thing)
            if before.perhaps(deed.thing, LEFT):
                bring_over(moment, before, deed.thing)
        case Kind.PART, Verb.LIFT:
            opened |= break_seals(moment, before, deed.thing)
        case Kind.PART, Verb.EXCHANGE | Verb.RENEW:
            leaves(moment, before, deed.thing)
            spare = left_over(before, deed.thing)
            arrives(moment, deed.thing)
        case Kind.PART, Verb.ADD:
            spare = left_over(before, deed.thing)
            arrives(moment, deed.thing)
    moment.now[deed.thing] = end_state(before, deed)
    if kind_of(moment, deed) is Kind.PART:
        if deed.verb in (Verb.REFIT, Verb.LOWER):
            closed |= close_joints(moment, before, deed)
        if deed.verb is Verb.RENEW:
            renew_joints(moment, deed.thing)
        new_unit(moment, before, deed)
    if unmet and unmet[0] in (Need.SHUT, Need.BETWEEN):
        moment.forget(deed.thing)
    if deed.verb in FILLS:
        fill(moment, closed)
    if deed.verb in EMPTIES or (deed.verb is Verb.LOOSEN and moment.world.captive(deed.thing)):
        empty(moment, opened)
    lose_power(moment, sources)
    return spare


def kind_of(moment: Moment, deed: Deed) -> Kind:
    return moment.world.kind(deed.thing)


def end_state(before: Moment, deed: Deed) -> Maybe:
    """By the table; a single-use thing is worn by what opens it, and too little torque leaves it loose."""
    thing = before.world.things[deed.thing]
    row = TABLE[thing.kind, deed.verb]
    if row.wears and thing.single_use:
        return WORN
    if isinstance(thing, Hole) and isinstance(deed.act, FastenerAct) and row.ends == IN:
        return HALF if too_little(before, thing, deed.act) else IN
    return row.ends


def too_little(moment: Moment, hole: Hole, act: FastenerAct) -> bool:
    """Whether the act says a figure below the record's."""
    wanted = first_that_holds(hole.torque, moment.world.answers)
    if act.torque is None or wanted is None:
        return False
    if act.torque.figure is None or wanted.figure is None:
        return False
    said, asked = unit_of(act.torque.figure.unit), unit_of(wanted.figure.unit)
    if said is None or asked is None or said.measures != asked.measures:
        return False
    return act.torque.figure.value * said.factor < wanted.figure.value * asked.factor


def new_unit(moment: Moment, before: Moment, deed: Deed) -> None:
    """Of a part to be replaced: whether the new one is in the hand, and whether it was ever fitted."""
    if deed.verb in (Verb.EXCHANGE, Verb.RENEW) and deed.thing in moment.unit:
        moment.unit[deed.thing] = frozenset({"hand"})
    for part, unit in moment.unit.items():
        if part in moment.now and moment.surely(part, IN) and not before.surely(part, IN):
            moment.unit[part] = unit - {"hand"} | ({"fitted"} if "hand" in unit else set())


def fill(moment: Moment, closed: dict[str, bool]) -> None:
    """What closes fills; `closed`: whether it surely closed."""
    for store in moment.world.stores():
        for key in moment.world.keys(store.filled_by):
            if key in closed:
                become(moment, store.key, IN, closed[key])


def empty(moment: Moment, opened: dict[str, bool]) -> None:
    """What opens empties."""
    for store in moment.world.stores():
        for key in moment.world.keys(store.emptied_by):
            if key in opened:
                become(moment, store.key, OUT, opened[key])


def become(moment: Moment, store: str, to: Maybe, surely: bool) -> None:
    now = moment.now[store]
    gone = now & GONE
    if now == gone:
        return
    moment.now[store] = gone | to if surely else now | to


def lose_power(moment: Moment, sources: dict[str, Maybe]) -> None:
    """With the last source goes the power."""
    if not sources or all(moment.now[key] == now for key, now in sources.items()):
        return
    if not any(moment.perhaps(key, IN) for key in sources):
        moment.now[POWER] = OUT
    elif not any(moment.surely(key, IN) for key in sources) and moment.perhaps(POWER, IN):
        moment.now[POWER] |= OUT
