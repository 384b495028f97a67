"""The guide does not say what must be true before the work begins.

Data to save, how far the battery may be charged, who may do it, how many hands, what kind of bench:
whoever finds out half-way leaves an open device alone. Each is said, or `none` is; then the reader
knows that somebody has thought of it.

Source: 29 CFR 1910.147(d)(1) asks for preparation before shutdown (from memory); the list is common
practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.naming import listed
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "the guide does not say before the work: {what}"

HELP = "say each under `before:` (data, charge, people, bench) and `skill:`, or `none` where nothing is needed"


def check(proof: Proof) -> Iterator[Hit]:
    guide, before = proof.guide, proof.guide.before
    said = {
        "data": before.data is not None,
        "charge": before.charge_most is not None or before.charge_said is not None,
        "skill": guide.skill is not None,
        "people": before.people is not None,
        "bench": before.bench is not None,
    }
    missing = [word for word, is_said in said.items() if not is_said]
    if missing:
        yield Hit(before.span or guide.title.span, {"what": listed(missing, most=len(missing))})
