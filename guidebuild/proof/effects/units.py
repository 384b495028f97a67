"""The mark of a goal's part: which unit is at hand."""

from guidebuild.proof.asking import Asking
from guidebuild.proof.marks import FITTED, HAND, mark


def new_unit(ask: Asking) -> None:
    """`exchange`, `renew`: a new one is in the hand."""
    ask.scene.put(mark(ask.key), ask.done, HAND)


def fitted(ask: Asking) -> None:
    """`refit`, `lower`: the new one, if it is the new one, is in its place."""
    ask.scene.turn(mark(ask.key), ask.done, 0, HAND, FITTED)
