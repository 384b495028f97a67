"""The guide does not reach what it was written for, or does not end as it says.

A part to be replaced must end new and fitted, one to be added fitted, one to be removed off; what
is inspected, cleaned or adjusted must once be in reach. And each thing must end as it began, or as
`ends:` says.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.states import State, word_for
from guidebuild.device.things import Thing
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Ending
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import endings, falls_short
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} {is} {what}"

HELP = "add the act that reaches it (`exchange` and `refit` for a replaced part), or correct `goal` or `ends`"


def check(proof: Proof) -> Iterator[Hit]:
    for loose in endings(proof, _is_one):
        yield loose.hit(proof, what=_what(proof, loose.first))


def _is_one(ending: Ending, thing: Thing) -> bool:
    return ending.because == "goal" or (
        ending.because in ("state", "ends")
        and not falls_short(ending)
        and ending.found != State.LEFT
    )


def _what(proof: Proof, ending: Ending) -> str:
    kind = proof.device.things[ending.thing].kind
    found, wanted = word_for(kind, ending.found), word_for(kind, ending.wanted)
    if ending.because == "ends":
        return f"{found} at the end, and the guide says that it ends {wanted}"
    if ending.because == "state":
        return f"{found} at the end, and was {wanted} at the start"
    match proof.guide.goal.verb:
        case "replace":
            return "not replaced: the old one is fitted at the end"
        case "add" | "remove":
            return f"{found} at the end, and the goal is to {proof.guide.goal.verb} it"
        case verb:
            return f"never in reach in this guide, which is there to {verb} it"
