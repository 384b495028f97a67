"""A caption has too many lines, too long a line, or stands too long.

A third line covers what the hands do. A line that is too long is broken by the player wherever it likes.

Source: BBC Subtitle Guidelines 3.3 (two lines); line lengths and the longest time from the code of a public subtitle
editor (42 characters; th 35; ja 23; ko, zh 16; 7 s).
"""

from collections.abc import Iterator, Sequence

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category
from guidebuild.translate.captions.limits import limits
from guidebuild.translate.captions.measure import length, lines, seconds
from guidebuild.translate.captions.slip import CueSlip
from guidebuild.translate.webvtt.cue import Cue

RULE = Rule(category=Category.TRANSLATION)

MESSAGE = "this caption is too long: {what}"

HELP = "{do}"


def check_captions(cues: Sequence[Cue], language: str) -> Iterator[CueSlip]:
    bounds = limits(language)
    for index, cue in enumerate(cues):
        said = lines(cue)
        longest = max((length(line, language) for line in said), default=0)
        if len(said) > bounds.lines:
            what, do = f"{len(said)} lines", f"say it in {bounds.lines} lines"
        elif longest > bounds.line:
            what = f"a line of {longest:g} characters"
            do = f"break it, or say it shorter: {bounds.line} characters fit in a line"
        elif cue.end - cue.start > bounds.longest:
            what = f"it stands for {seconds(cue.end - cue.start)}"
            do = f"end it after {seconds(bounds.longest)}; nobody looks at it any more"
        else:
            continue
        yield CueSlip(index, {"what": what, "do": do})
