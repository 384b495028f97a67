"""Which consequences follow which act, in which order."""

from collections.abc import Callable
from functools import cache
from typing import TypeAlias

from guidebuild.device.acts import Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Joint, Thing
from guidebuild.proof.asking import Asking
from guidebuild.proof.bench import Bench
from guidebuild.proof.effects.arriving import arrive
from guidebuild.proof.effects.change import change
from guidebuild.proof.effects.filling import empty, empty_if_open, fill
from guidebuild.proof.effects.joints import break_seals, close_joints, renew_joints
from guidebuild.proof.effects.leaving import bring_over, leave
from guidebuild.proof.effects.units import fitted, new_unit

Effect: TypeAlias = Callable[[Asking], None]
Effects: TypeAlias = tuple[Effect, ...]

_OPEN = (Verb.DISCONNECT, Verb.RELEASE, Verb.RENEW, Verb.SWITCH_OFF)
_CLOSE = (Verb.RECONNECT, Verb.CLOSE, Verb.RESTORE, Verb.SWITCH_ON, Verb.REFIT, Verb.TIGHTEN)


@cache
def _all(kind: Kind, verb: Verb) -> Effects:
    match kind, verb:
        case Kind.PART, Verb.REMOVE:
            return break_seals, bring_over, change, empty
        case Kind.PART, Verb.LIFT:
            return break_seals, change, empty
        case Kind.PART, Verb.REFIT | Verb.LOWER:
            return close_joints, fitted, fill
        case Kind.PART, Verb.EXCHANGE:
            return leave, arrive, change, new_unit, empty
        case Kind.PART, Verb.RENEW:
            return leave, arrive, change, new_unit, renew_joints, empty
        case Kind.PART, Verb.ADD:
            return change, arrive
        case Kind.FASTENER, Verb.REMOVE:
            return change, empty
        case Kind.FASTENER, Verb.LOOSEN:
            return change, empty_if_open
        case _ if verb in _OPEN:
            return change, empty
        case _ if verb in _CLOSE:
            return change, fill
        case _:
            return (change,)


def _may_follow(bench: Bench, effect: Effect, thing: Thing) -> bool:
    """Whether the record leaves anything for an effect to do."""
    if effect is change:
        return True
    layout = bench.layout
    if effect is empty or effect is empty_if_open:
        return thing.key in layout.stores.emptied_by
    if effect is fill:
        return thing.key in layout.stores.filled_by
    if effect is break_seals:
        links = layout.touching(thing.key)
        return any(isinstance(link, Joint) and link.joint == "seal" for link in links)
    if effect is fitted or effect is new_unit:
        return bench.guide.goal.verb == "replace" and thing.key in bench.goal
    return True


def effects(bench: Bench, verb: Verb, thing: Thing) -> Effects:
    """What follows an act on a thing, its own change among it."""
    everything = _all(thing.kind, verb)
    if len(everything) == 1:
        return everything
    if everything[0] is close_joints and thing.key not in bench.layout.through:
        everything = (change, *everything[1:])
    return tuple([one for one in everything if _may_follow(bench, one, thing)])
