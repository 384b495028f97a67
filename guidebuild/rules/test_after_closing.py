"""The first test of a function comes when the plug that carries it lies behind a closed cover again.

When the test fails, everything comes off again, and a second round of screws and clips wears what
they hold. A cover that is laid on and not yet screwed down counts as open. Some devices work only
when closed; then allow it with that reason.

Source: common practice, no source.
"""

from collections.abc import Iterator
from functools import reduce
from operator import or_

from guidebuild.device.naming import called, lowered
from guidebuild.device.states import State
from guidebuild.guide.blocks.check import Check
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof, Walked
from guidebuild.proof.questions.history import put_there
from guidebuild.proof.questions.joined import shown
from guidebuild.proof.questions.moment import covers_of
from guidebuild.proof.questions.standing import guarded, holes_at
from guidebuild.proof.questions.testing import Closed, first_tests
from guidebuild.source.finding import Category
from guidebuild.source.span import Span

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "the first test of {function} comes when {thing} lies behind {blame} again"

HELP = "move this check before {blame} goes on, or before it is screwed down"


def check(proof: Proof) -> Iterator[Hit]:
    said: dict[tuple[Span, str], Hit] = {}
    for closed, test in first_tests(proof):
        for cover, where in _closed_over(proof, closed, test).items():
            hit = _hit(proof, closed, test, cover, where)
            said.setdefault((hit.span, cover), hit)
    yield from said.values()


def _closed_over(proof: Proof, closed: Closed, test: Walked) -> dict[str, int]:
    """Outer covers that hide the link at the test and can't just be lifted off again."""
    found = {}
    for cover, hides in covers_of(proof, test.before, closed.move.thing).items():
        where = hides & closed.where
        inner = proof.layout.covers.behind(cover)
        if where and not inner and not guarded(proof, cover):
            found[cover] = where & _screwed(proof, test, cover)
    return {cover: where for cover, where in found.items() if where}


def _screwed(proof: Proof, test: Walked, cover: str) -> int:
    """Where one of its screws is in; everywhere, for a part that no screw holds."""
    holes = holes_at(proof.device).get(cover, ())
    tight = (test.before.surely(key, State.IN) for key in holes)
    return reduce(or_, tight) if holes else proof.configurations.everywhere


def _hit(proof: Proof, closed: Closed, test: Walked, cover: str, where: int) -> Hit:
    assert isinstance(test.doing, Check)
    said = next(said for said in test.doing.tests if said.text == closed.function)
    name = proof.device.functions.get(closed.function)
    words = {
        "function": lowered(name.text) if name else closed.function,
        "thing": called(proof.device, closed.move.thing),
        "blame": called(proof.device, cover),
    }
    there = put_there(proof, [cover], test.doing, where)
    return Hit(said.span, words, there, where, shown(proof, test.step))
