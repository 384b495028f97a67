"""Laws that hold for all rules on any guide, asked of random devices, procedures and mistakes.

A rule never falls over, and never speaks of configurations that there are not. And whatever the walk found is told by
just one rule: a mistake that no rule tells is lost, one that two rules tell is told twice.
"""

from collections.abc import Iterator
from dataclasses import replace

import pytest

from guidebuild.build import rulebook, tell
from guidebuild.guide.content import Content
from guidebuild.guide.settings import Settings
from guidebuild.proof.hit import Hit
from guidebuild.proof.mistake import Ending, Parting, Unmet
from guidebuild.proof.proof import Proof
from guidebuild.proof.prove import prove
from tests.proof.fuzz.case import case
from tests.proof.fuzz.dice import seeded
from tests.rules.listed import listed

OF_THE_WALK = [
    name
    for name in listed("Completeness", "Order and reach", "Safety")
    if name not in ("cable-strained", "record-impossible", "work-while-on", "stopped-live")
]


def proof_of(seed: int) -> tuple[Proof, Content]:
    made = case(seeded(seed))
    kits = {use.kit.id: use.kit for use in made.guide.kits}
    content = Content(".", Settings(), {}, {}, {made.device.id: made.device}, kits, ())
    return prove(made.guide, made.device), content


def hits(name: str, proof: Proof, content: Content) -> Iterator[Hit]:
    rule = rulebook.entry(name)
    if rule.check is not None:
        yield from rule.hits(proof, content)


@pytest.mark.parametrize("first", range(0, 200, 20))
def test_no_rule_falls_over_or_speaks_of_nothing(first: int) -> None:
    for seed in range(first, first + 20):
        proof, content = proof_of(seed)
        everywhere = proof.configurations.everywhere
        for name in rulebook.names():
            for hit in hits(name, proof, content):
                where = everywhere if hit.where is None else hit.where
                assert where and where | everywhere == everywhere, (seed, name)
                assert tell.finding(rulebook.entry(name), hit, proof.configurations).message


def speakers(proof: Proof, content: Content) -> dict[str, int]:
    return {name: len(list(hits(name, proof, content))) for name in OF_THE_WALK}


@pytest.mark.parametrize("first", range(0, 60, 10))
def test_what_the_walk_found_is_told_by_just_one_rule(first: int) -> None:
    for seed in range(first, first + 10):
        proof, content = proof_of(seed)
        bare = replace(proof, unmet=(), endings=(), partings=())
        silent = speakers(bare, content)
        every: tuple[Unmet | Ending | Parting, ...] = (
            *proof.unmet,
            *proof.endings,
            *proof.partings,
        )
        for one in every:
            alone = speakers(_only(bare, one), content)
            told = [name for name in OF_THE_WALK if alone[name] > silent[name]]
            assert len(told) == 1, (seed, one, told)


def _only(proof: Proof, one: Unmet | Ending | Parting) -> Proof:
    match one:
        case Unmet():
            return replace(proof, unmet=(one,))
        case Ending():
            return replace(proof, endings=(one,))
        case Parting():
            return replace(proof, partings=(one,))
