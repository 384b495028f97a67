"""A goal's new unit is not exchanged again while it is in the hand."""

from guidebuild.device.acts import Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Thing
from guidebuild.proof.asking import Asking, Lack, lack
from guidebuild.proof.bench import Bench
from guidebuild.proof.marks import HAND, mark
from guidebuild.proof.watch import Watched


def asked_of(kind: Kind, verb: Verb) -> bool:
    """Exchanging or renewing a part."""
    return kind is Kind.PART and verb in (Verb.EXCHANGE, Verb.RENEW)


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """The mark of a part that the goal replaces."""
    replaced = bench.guide.goal.verb == "replace" and thing.key in bench.goal
    return ((mark(thing.key), HAND),) if replaced else ()


def old_unit(ask: Asking) -> Lack | None:
    """The mark says so."""
    return lack(ask.scene.surely(mark(ask.key), HAND) & ask.where, {})
