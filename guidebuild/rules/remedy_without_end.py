"""A remedy may be tried again and again: it has no `tries`, and does not end in `stop`.

The reader reseats the same plug for an hour. After so many tries the fault is elsewhere, and the
guide should say so.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = 'nothing says how often to try the remedy "{stage}"'

HELP = "add `tries:` to the remedy and `then:` to its stage, with what to do after that; or let it end in `stop:`"


def check(proof: Proof) -> Iterator[Hit]:
    for stage in proof.guide.stages:
        remedy = stage.remedy
        if remedy is not None and remedy.stop is None and remedy.tries is None:
            yield Hit(remedy.span, {"stage": stage.title.text})
