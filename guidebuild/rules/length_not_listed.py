"""The standard that the record names does not list a screw of this length.

A 21 for a 12, or a length that was measured with the head: the one on the device is another, and whoever orders by the
record gets nothing, or the wrong one. A length in the record is what tells look-alike screws apart, so it is worth a
second look.

Source: length series and ranges of ISO 1207, 1580, 2009, 2010, 4026, 4762, 7045 to 7048, 7380, 10642, 14580 to 14584
and DIN 967, as restated in the general-purpose package bd_warehouse 0.4.0.
"""

from collections.abc import Iterator
from decimal import Decimal

from guidebuild.device.lengths import listed
from guidebuild.device.screw import Screw
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.once import once
from guidebuild.proof.questions.screws_used import screws_used
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "{standard} lists no {thread} of {length} mm: {near}"

HELP = "measure it again, from under the head to the tip, a countersunk one over all; or leave the standard out"


def check(proof: Proof) -> Iterator[Hit]:
    yield from once(hit for one in screws_used(proof) for hit in _unlisted(one.screw))


def _unlisted(screw: Screw) -> Iterator[Hit]:
    known = listed(screw)
    if not known or screw.length is None or screw.length in known or screw.span is None:
        return
    words = {
        "standard": screw.standard,
        "thread": screw.thread,
        "length": f"{screw.length.normalize():f}",
        "near": _near(screw.length, known),
    }
    yield Hit(screw.span, words)


def _near(length: Decimal, known: tuple[Decimal, ...]) -> str:
    """`its lengths next to it are 20 and 25 mm`, `its shortest is 4 mm`."""
    below = [one for one in known if one < length]
    above = [one for one in known if one > length]
    if not below:
        return f"its shortest is {known[0]} mm"
    if not above:
        return f"its longest is {known[-1]} mm"
    return f"the lengths next to it are {below[-1]} and {above[0]} mm"
