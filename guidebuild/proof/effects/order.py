"""Which consequences follow which act, in which order."""

from collections.abc import Callable
from typing import TypeAlias

from guidebuild.device.acts import TABLE, Verb
from guidebuild.device.states import Kind
from guidebuild.proof.asking import Asking
from guidebuild.proof.effects.arriving import arrive
from guidebuild.proof.effects.change import change
from guidebuild.proof.effects.filling import empty, empty_if_open, fill
from guidebuild.proof.effects.joints import break_seals, close_joints, renew_joints
from guidebuild.proof.effects.leaving import bring_over, leave
from guidebuild.proof.effects.units import fitted, new_unit

Effect: TypeAlias = Callable[[Asking], None]

_OPEN = (Verb.DISCONNECT, Verb.RELEASE, Verb.SWITCH_OFF)
_CLOSE = (Verb.RECONNECT, Verb.CLOSE, Verb.RESTORE, Verb.SWITCH_ON, Verb.REFIT, Verb.TIGHTEN)


def _effects(kind: Kind, verb: Verb) -> tuple[Effect, ...]:
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


EFFECTS: dict[tuple[Kind, Verb], tuple[Effect, ...]] = {
    (kind, verb): _effects(kind, verb) for kind, verb in TABLE
}
