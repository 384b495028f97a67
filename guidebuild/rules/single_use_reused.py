"""Something that may be used only once is put back after it was opened.

A seal takes a set, a clip breaks its teeth, a locking screw loses its patch, an adhesive its grip.
Put back, it holds for the test and lets go in use. The record says `single-use`; the guide has to
renew it, and the kit to bring it.

Source: common practice, no source.
"""

from collections.abc import Iterator
from dataclasses import replace

from guidebuild.device.acts import CLOSING
from guidebuild.device.ends import STAY_OPEN
from guidebuild.device.states import State
from guidebuild.device.things import Joint, Thing
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Ending, Need
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import place, taken_away, told
from guidebuild.proof.questions.joined import closed_over, endings, falls_short, unmet
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{thing} can be used only once, and goes back without being renewed"

HELP = "renew {thing} before it goes back (`renew:`), and list it in the kit"


def check(proof: Proof) -> Iterator[Hit]:
    for mistake in unmet(proof, Need.STATE):
        if mistake.first.found == State.WORN and mistake.move.verb in CLOSING:
            there = taken_away(proof, mistake.things, mistake.move, mistake.where)
            yield mistake.hit(proof, there)
    for loose in endings(proof, _closed_worn):
        over, broken = closed_over(proof, loose.first), loose.first.last
        hit = loose.hit(proof)
        related = (told(proof, broken),) if broken and over else ()
        yield replace(hit, span=place(over) if over else hit.span, related=related)


def _closed_worn(ending: Ending, thing: Thing) -> bool:
    """A joint that its part closes by itself: it was broken, and the part went on over it."""
    return (
        falls_short(ending)
        and ending.found == State.WORN
        and isinstance(thing, Joint)
        and thing.joint not in STAY_OPEN
    )
