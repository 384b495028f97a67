"""Stopped and starved: what must hold afterwards, over as many trials as are asked for."""

import random

from tests.kill.faults import failing_at, full_after
from tests.kill.forms import Form
from tests.kill.scene import Scene, killed, ran, tree

_UNSAID = (0, 2)  # all went well, or trouble was told; never a fault of ours


def kill(form: Form, scene: Scene, times: int, seed: int = 7) -> int:
    """Kill the command at random moments of its writing; how often it was still at work."""
    dice, hit = random.Random(seed), 0
    authors = tree(scene.old), tree(scene.new)
    for _ in range(times):
        wait = dice.uniform(0, form.writing)
        early = dice.random() < 0.1  # before anything is written
        hit += killed(form.words(scene.new), lambda: True if early else form.begun(), wait)  # noqa: B023
        form.check(form)
        form.mend(scene)
        assert (tree(scene.old), tree(scene.new)) == authors
        form.reset(scene)
    return hit


def starve(form: Form, scene: Scene, step: int = 1) -> int:
    """An error at each change of the disk in turn, once and for good; how many there were."""
    at, tried = 1, 0
    while True:
        codes = []
        for for_good in (False, True):
            codes.append(ran(form.words(scene.new), failing_at(form.place, at, for_good)))
            assert codes[-1] in _UNSAID, (at, for_good)
            form.check(form)
            form.mend(scene)
            form.reset(scene)
            tried += 1
        if codes == [0, 0] and at > 3:
            return tried
        at += step


def fill(form: Form, scene: Scene, times: int, seed: int = 7) -> int:
    """The disk full in the middle of a file; how often that was told."""
    dice, told = random.Random(seed), 0
    largest = max(map(len, form.after.values()))
    for _ in range(times):
        code = ran(form.words(scene.new), full_after(dice.randrange(largest)))
        assert code in _UNSAID
        told += code == 2
        form.check(form)
        form.mend(scene)
        form.reset(scene)
    return told
