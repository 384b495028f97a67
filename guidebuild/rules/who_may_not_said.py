"""Work on mains, gas or a refrigerant, and the guide does not say who may do it.

In most places such work is kept by law to people with a licence, and an insurance asks for it. The
guide can't know the local code, but it can say which skill it asks for and send everybody else
away.

Source: common practice, no source; national law decides (for mains, gas and refrigerants alike),
and a guide defers to it.
"""

import re
from collections.abc import Iterator

from guidebuild.device.record import Device
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cautioned import keys_of
from guidebuild.proof.questions.history import place, walked
from guidebuild.source.finding import Category, Related
from guidebuild.source.remembered import remembered

RULE = Rule(category=Category.SAFETY)

MESSAGE = "this guide works on {what}, and does not say who may do that"

HELP = "say `skill: skilled` or `licensed`, and with `only:` who may do it under the local code"


DANGEROUS = {
    "mains": re.compile(r"\bmains\b|\b(?:230|240|120|110|400) ?V\b", re.IGNORECASE),
    "gas": re.compile(
        r"\b(?:natural gas|gas valve|gas line|gas pipe|gas burner|gas supply|propane|butane)\b",
        re.I,
    ),
    "refrigerant": re.compile(r"\brefrigerants?\b", re.IGNORECASE),
}


def check(proof: Proof) -> Iterator[Hit]:
    guide = proof.guide
    if guide.skill is not None and guide.only is not None:
        return
    for what, things in _dangerous(proof.device).items():
        move = _first(proof, things)
        if move is not None:
            span = guide.skill.span if guide.skill else guide.title.span
            related = (Related(place(move), "it is handled here"),)
            yield Hit(span, {"what": what}, related)
            return


def _first(proof: Proof, things: frozenset[str]) -> Move | None:
    """The first act on one of these."""
    moves = (one.doing for one in walked(proof) if things)
    return next((one for one in moves if isinstance(one, Move) and one.thing in things), None)


@remembered
def _dangerous(device: Device) -> dict[str, frozenset[str]]:
    """Keys of the things that are called so, or that a hazard of the record calls so."""
    return {what: frozenset(_called(device, pattern)) for what, pattern in DANGEROUS.items()}


def _called(device: Device, pattern: re.Pattern[str]) -> Iterator[str]:
    for hazard in device.hazards.values():
        if pattern.search(hazard.hazard.text):
            yield from keys_of(device, hazard)
    for thing in device.things.values():
        name = thing.name.text if thing.name else ""
        if pattern.search(f"{thing.id.replace('-', ' ')} {name}"):
            yield thing.key
