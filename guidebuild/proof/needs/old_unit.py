"""A goal's new unit is not exchanged again while it is in the hand."""

from guidebuild.proof.asking import Asking, Lack, lack
from guidebuild.proof.marks import HAND, mark


def old_unit(ask: Asking) -> Lack | None:
    """The mark says so; parts that are no goal have none."""
    key = mark(ask.key)
    if key not in ask.scene.values:
        return None
    return lack(ask.scene.surely(key, HAND) & ask.where, {})
