"""While nothing is found: no closed screw or joint spans two bodies, no plug sits on a missing part, and no
power is on without a source. Random devices and procedures; what a record or a guide says of the start may
contradict the law, so only what was not so at the start counts.
"""

from functools import partial

from guidebuild.device.record import POWER
from guidebuild.proof.proof import Proof
from guidebuild.proof.prove import prove
from tests.proof.fuzz.answers import numbered
from tests.proof.fuzz.case import Case, case
from tests.proof.fuzz.compare import states_in
from tests.proof.fuzz.dice import seeded
from tests.proof.law.acts import clean_moments
from tests.proof.law.held import breaches
from tests.proof.oracle.conditions import Answers
from tests.proof.oracle.sets import HALF, IN, LEFT, OUT, Maybe
from tests.proof.oracle.world import World

CASES = 800
ENOUGH = 5000  # moments without a finding, or the test says little


def broken(
    one: Case, proof: Proof, number: int, answers: Answers
) -> tuple[int, list[tuple[str, str]]]:
    """How many clean moments there were, and what contradicts the law in them."""
    world = World(one.guide, one.device, answers)
    at_start = set(breaches(world, partial(states_in, proof.start, number=number)))
    count, found = 0, []
    for moment in clean_moments(proof, number):
        count += 1
        ask = partial(states_in, moment, number=number)
        found += [breach for breach in breaches(world, ask) if breach not in at_start]
    return count, found


def test_the_law_holds_while_nothing_is_found() -> None:
    moments = 0
    for seed in range(CASES):
        one = case(seeded(seed), mistakes=0)
        proof = prove(one.guide, one.device)
        for number, answers in numbered(one.guide, proof.configurations).items():
            count, found = broken(one, proof, number, answers[0])
            moments += count
            assert not found, f"seed {seed}, configuration {number}: {found}"
    assert moments >= ENOUGH


def breach(changed: dict[str, Maybe]) -> list[tuple[str, str]]:
    """What is seen of a small device that is whole but for these things."""
    one = small()
    world = World(one.guide, one.device, {})
    return list(breaches(world, lambda key: changed.get(key, IN)))


def small() -> Case:
    """A random device with a screw in a part, and a source between two."""
    for one in map(case, map(seeded, range(500))):
        world = World(one.guide, one.device, {})
        if not one.guide.options and len(world.sources()) == 1 and one.device.holes:
            return one
    raise AssertionError


def test_a_whole_device_breaks_nothing() -> None:
    assert not breach({})


def test_a_screw_across_two_bodies_is_seen() -> None:
    one = small()
    part = next(end.text for end in one.device.holes[0].ends if end.text != "frame")
    words = breach({part: HALF})
    assert ("a closed screw or joint spans two bodies", one.device.holes[0].key) in words


def test_a_plug_on_a_missing_part_is_seen() -> None:
    plug = small().device.connectors[0]
    assert ("a plug sits on a missing part", plug.key) in breach({plug.ends[0].text: LEFT})


def test_power_without_a_source_is_seen() -> None:
    plug = next(plug for plug in small().device.connectors if plug.source)
    assert breach({plug.key: OUT}) == [("power is on without a source", POWER)]
