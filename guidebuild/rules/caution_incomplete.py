"""A caution does not say what the hazard is, or how to avoid it.

"Be careful" tells nobody what to do with the hands. A safety message says what can hurt, what
happens then, and what to do so that it does not happen. The consequence may be left out where the
avoidance makes it plain.

Source: ANSI Z535.6, the contents of a safety message, as restated by a law firm in 2007 and in
OASIS DITA 1.3; DITA 2.0's `hazardstatement` requires one hazard and at least one way to avoid it,
read in its DTD.
"""

from collections.abc import Iterator

from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.inside import cautions, steps_with
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category
from guidebuild.source.said import Said

RULE = Rule(category=Category.SAFETY)

MESSAGE = "this caution does not say {what}"

HELP = "say what can hurt or break, and with `avoid:` what to do so that it does not happen"


def check(proof: Proof) -> Iterator[Hit]:
    for step in steps_with(proof.guide, Caution):
        for caution in cautions(step):
            if caution.level is not None:
                what = _missing(caution.hazard, caution.avoid)
                if what:
                    yield Hit(caution.level.span, {"what": what})
    for hazard in proof.device.hazards.values():
        what = _missing(hazard.hazard, hazard.avoid)
        if what:
            yield Hit(hazard.span, {"what": what})


def _missing(hazard: Said | None, avoid: tuple[Said, ...]) -> str:
    if hazard is None or not hazard.text.strip():
        return "what the hazard is"
    return "" if any(said.text.strip() for said in avoid) else "how to avoid it"
