"""Two screws that are easily mixed up are out at the same time, and nothing tells them apart.

Same head, drive and thread, another length. The longer one in the shorter hole breaks what lies
below: a board, a display, a cell. It is found when the device is switched on. Told at the first of
the two that goes back.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.naming import called
from guidebuild.device.states import State
from guidebuild.device.things import Hole
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof, Walked
from guidebuild.proof.questions.alike import lengths_apart, screws_going_in, where_alike
from guidebuild.proof.questions.history import place, taken_away
from guidebuild.proof.questions.joined import shown
from guidebuild.proof.questions.told_apart import told_apart
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} and {other} are out together and differ only in length"

HELP = "say in this step which hole takes the longer one (a caution, a note, a sentence), or put a point on each"


def check(proof: Proof) -> Iterator[Hit]:
    told_of: set[frozenset[str]] = set()
    for hole, move, one in screws_going_in(proof):
        for other, where in _mixed_up(proof, one, hole):
            pair = frozenset({hole.group, other.group})
            if pair not in told_of and not told_apart(proof, hole, other):
                told_of.add(pair)
                yield _hit(proof, move, hole, other, where)


def _mixed_up(proof: Proof, one: Walked, hole: Hole) -> Iterator[tuple[Hole, int]]:
    """Screws that are surely out when this one goes back, and differ from it only in length."""
    for other in lengths_apart(proof.device).get(hole.key, ()):
        if other.key != hole.key and not (other.captive or hole.captive):
            out = one.before.surely(other.key, State.OUT) & one.where
            where = where_alike(proof, hole, other, out)
            if where:
                yield other, where


def _hit(proof: Proof, move: Move, hole: Hole, other: Hole, where: int) -> Hit:
    words = {
        "thing": called(proof.device, hole.key),
        "other": called(proof.device, other.key),
    }
    there = taken_away(proof, [hole.key, other.key], move, where)
    return Hit(place(move), words, there, where, shown(proof, move.step))
