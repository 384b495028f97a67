"""Which needs are asked of which act, in which order."""

from collections.abc import Callable
from typing import TypeAlias

from guidebuild.device.acts import CLOSING, REPLACING, TABLE, Verb
from guidebuild.device.states import Kind
from guidebuild.proof.asking import Asking, Lack
from guidebuild.proof.mistake import Need
from guidebuild.proof.needs.between import between
from guidebuild.proof.needs.dead import dead
from guidebuild.proof.needs.drain import drain
from guidebuild.proof.needs.free import free
from guidebuild.proof.needs.here import here, state
from guidebuild.proof.needs.met import met
from guidebuild.proof.needs.old_unit import old_unit
from guidebuild.proof.needs.reach import reach
from guidebuild.proof.needs.safe import safe
from guidebuild.proof.needs.shut import shut
from guidebuild.proof.needs.source import source

Question: TypeAlias = Callable[[Asking], Lack | None]

_LINKS = (Kind.FASTENER, Kind.CONNECTOR, Kind.JOINT)
_PUT_AWAY = (Verb.EXCHANGE, Verb.RENEW)  # the old unit leaves, and a new one is in the hand


def _asked(kind: Kind, verb: Verb) -> dict[Need, Question | None]:
    """Each need with its question, or None where it is not asked of this act."""
    part, worked = kind is Kind.PART, verb not in REPLACING
    leaves = verb in (Verb.LIFT, Verb.REMOVE, *_PUT_AWAY)
    closes = (verb in CLOSING and kind in _LINKS) or verb is Verb.RESTORE
    return {
        Need.HERE: here,
        Need.STATE: state,
        Need.OLD_UNIT: old_unit if part and verb in _PUT_AWAY else None,
        Need.REACH: reach if worked and kind is not Kind.POWER else None,
        Need.SAFE: safe if worked else None,
        Need.DEAD: dead if kind is Kind.CONNECTOR else None,
        Need.FREE: free if part and leaves else None,
        Need.MET: met if verb in CLOSING else None,
        Need.SHUT: shut if closes else None,
        Need.DRAIN: drain if kind is Kind.STORE and verb is Verb.RELEASE else None,
        Need.BETWEEN: between if kind is Kind.JOINT and verb is Verb.RENEW else None,
        Need.SOURCE: source if verb is Verb.SWITCH_ON else None,
    }


NEEDS: dict[tuple[Kind, Verb], tuple[tuple[Need, Question], ...]] = {
    (kind, verb): tuple(
        (need, question) for need, question in _asked(kind, verb).items() if question is not None
    )
    for kind, verb in TABLE
}
