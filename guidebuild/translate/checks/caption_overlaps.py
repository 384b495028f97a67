"""A caption comes while the one before it still stands, or flickers after it.

Two captions at a time are read in no order, and a pause of a frame looks like a fault of the film.

Source: BBC Subtitle Guidelines 4.5 (no gap, or a clear one); at least two frames from the code of a public subtitle
editor. Their 1 s is not asked for here: it is broken by nearly every film, and does no harm.
"""

from collections.abc import Iterator, Sequence
from itertools import pairwise

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category
from guidebuild.translate.captions.limits import limits
from guidebuild.translate.captions.measure import seconds
from guidebuild.translate.captions.slip import CueSlip
from guidebuild.translate.webvtt.cue import Cue

RULE = Rule(category=Category.TRANSLATION)

MESSAGE = "this caption {what}"

HELP = "{do}"


def check_captions(cues: Sequence[Cue], language: str) -> Iterator[CueSlip]:
    least = limits(language).gap
    for index, (before, cue) in enumerate(pairwise(cues), start=1):
        gap = cue.start - before.end
        if gap < 0:
            what = f"begins {seconds(-gap)} before the one above it ends"
            yield CueSlip(index, {"what": what, "do": "end the one above where this one begins"})
        elif 0 < gap < least:
            what = f"begins {seconds(gap)} after the one above it ends"
            do = f"leave no gap, or at least {seconds(least)}"
            yield CueSlip(index, {"what": what, "do": do})
