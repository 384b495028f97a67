"""A goal's new unit is not exchanged again while it is in the hand."""

from guidebuild.device.acts import Verb
from guidebuild.device.things import Part, Thing
from guidebuild.proof.asking import Asking, Lack, lack
from guidebuild.proof.bench import Bench
from guidebuild.proof.marks import HAND, mark


def asked_of(bench: Bench, verb: Verb, thing: Thing) -> bool:
    """Exchanging or renewing a part that the goal replaces."""
    away = isinstance(thing, Part) and verb in (Verb.EXCHANGE, Verb.RENEW)
    return away and bench.guide.goal.verb == "replace" and thing.key in bench.goal


def old_unit(ask: Asking) -> Lack | None:
    """The mark says so."""
    return lack(ask.scene.surely(mark(ask.key), HAND) & ask.where, {})
