"""Stores that are filled or emptied by what is done to something else."""

from collections.abc import Iterable

from guidebuild.device.things import Hole
from guidebuild.proof.asking import Asking
from guidebuild.proof.plain import HOLDING, IN, OUT, WORN


def fill(ask: Asking) -> None:
    """Closing or switching on what a store names in `filled-by` fills it."""
    filled(ask, ask.key, ask.done, ask.done)


def empty(ask: Asking) -> None:
    """Opening or exchanging what a store names in `emptied-by` empties it."""
    emptied(ask, ask.key, ask.done, ask.done)


def empty_if_open(ask: Asking) -> None:
    """Loosening a captive screw opens it: a bleed screw. Any other loose screw still closes its hole."""
    if isinstance(ask.thing, Hole) and ask.thing.captive:
        empty(ask)


def filled(ask: Asking, key: str, sure: int, maybe: int) -> None:
    """`key` surely was closed in `sure`, and may have been in `maybe`."""
    _become(ask, ask.scene.layout.stores.filled_by.get(key, ()), (sure, maybe), IN)


def emptied(ask: Asking, key: str, sure: int, maybe: int) -> None:
    """`key` surely was opened in `sure`, and may have been in `maybe`."""
    _become(ask, ask.scene.layout.stores.emptied_by.get(key, ()), (sure, maybe), OUT)


def _become(
    ask: Asking, stores: Iterable[tuple[str, int]], where: tuple[int, int], state: int
) -> None:
    for store, there in stores:
        sure, maybe = (ask.scene.both(one, there) for one in where)
        if maybe:
            ask.scene.turn(store, sure, maybe, OUT | WORN | HOLDING, state)
            ask.scene.history.worked.append((store, ask.work, maybe))
