"""Stores that are filled or emptied by what is done to something else."""

from guidebuild.device.things import Hole
from guidebuild.proof.asking import Asking
from guidebuild.proof.plain import HOLDING, IN, OUT, WORN
from guidebuild.proof.scene import Scene


def fill(ask: Asking) -> None:
    """Closing or switching on what a store names in `filled-by` fills it."""
    filled(ask.scene, ask.key, ask.done)


def empty(ask: Asking) -> None:
    """Opening or exchanging what a store names in `emptied-by` empties it."""
    emptied(ask.scene, ask.key, ask.done)


def empty_if_open(ask: Asking) -> None:
    """Loosening a captive screw opens it: a bleed screw. Any other loose screw still closes its hole."""
    if isinstance(ask.thing, Hole) and ask.thing.captive:
        empty(ask)


def filled(scene: Scene, key: str, where: int) -> None:
    """`key` was closed in `where`."""
    for store, there in scene.layout.stores.filled_by.get(key, ()):
        scene.turn(store, scene.both(where, there), 0, OUT | WORN | HOLDING, IN)


def emptied(scene: Scene, key: str, where: int) -> None:
    """`key` was opened in `where`."""
    for store, there in scene.layout.stores.emptied_by.get(key, ()):
        scene.turn(store, scene.both(where, there), 0, OUT | WORN | HOLDING, OUT)
