"""Whatever is wrong at the end of a guide is told by just one rule, never by none and never by two."""

from dataclasses import replace
from itertools import product

import pytest

from guidebuild.build import rulebook
from guidebuild.device.states import State
from guidebuild.guide.content import Content
from guidebuild.proof.mistake import Ending
from guidebuild.proof.proof import Proof
from guidebuild.proof.prove import prove
from tests.rules.fixture import HERE, Fixture
from tests.rules.listed import listed

FIXTURE = Fixture(HERE / "store-not-refilled" / "good-set-again.md")
THINGS = (
    "cover",
    "cover-screws.left",
    "key-flex",
    "cover-seal",
    "cover-clips",
    "density",
    "flex-guide",
)
STATES = (State.IN, State.HALF, State.OUT, State.WORN, State.LEFT)
BECAUSE = ("state", "ends", "left-over", "packing", "goal", "lost")


@pytest.fixture(scope="module")
def proof() -> Proof:
    content: Content = FIXTURE.content()
    return prove(content.guides[0].guide, content.guides[0].device)


def speakers(proof: Proof, ending: Ending) -> list[str]:
    """The rules that say something where this is all that is wrong."""
    bare = replace(proof, unmet=(), partings=(), endings=(ending,))
    clean = replace(bare, endings=())
    return [
        name
        for name in listed("Completeness")
        if (check := rulebook.entry(name).check)
        and len(list(check(bare))) > len(list(check(clean)))
    ]


@pytest.mark.parametrize("because", BECAUSE)
def test_an_ending_has_one_rule(proof: Proof, because: str) -> None:
    everywhere = proof.configurations.everywhere
    for thing, wanted, found in product(THINGS, (State.IN, State.OUT), STATES):
        if wanted != found or because not in ("state", "ends"):
            ending = Ending(thing, wanted, found, everywhere, because, None)
            assert len(speakers(proof, ending)) == 1, (thing, wanted, found)
