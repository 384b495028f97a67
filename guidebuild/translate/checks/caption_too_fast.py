"""A caption goes before it can be read.

Hands are busy at the bench: who misses a caption has to put the screw down and go back. Figures and names of parts take
longer than talk.

Source: BBC Subtitle Guidelines 4 (160 to 180 words a minute, more time for technical items); characters a second and
shortest times from the code of a public subtitle editor (17; en, ar 20; hi 22; ko 12; zh 9; ja 4; 5/6 s, ja 0.5 s);
Latin scripts get 15 here.
"""

from collections.abc import Iterator, Sequence

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category
from guidebuild.translate.captions.limits import limits
from guidebuild.translate.captions.measure import length, lines, seconds
from guidebuild.translate.captions.slip import CueSlip
from guidebuild.translate.webvtt.cue import Cue

RULE = Rule(category=Category.TRANSLATION)

MESSAGE = "this caption of {time} is too fast: {what}"

HELP = "{do}"


def check_captions(cues: Sequence[Cue], language: str) -> Iterator[CueSlip]:
    for index, cue in enumerate(cues):
        if said := _said(cue, language):
            after = cues[index + 1].start if index + 1 < len(cues) else None
            words = {"time": seconds(cue.end - cue.start), "what": said, "do": _do(cue, after)}
            yield CueSlip(index, words)


def _said(cue: Cue, language: str) -> str:
    """What is too fast about it; empty where nothing is."""
    bounds, time = limits(language), cue.end - cue.start
    text = " ".join(lines(cue))
    if not text:
        return ""
    if time < bounds.shortest:
        return f"none shorter than {seconds(bounds.shortest)} is seen"
    count = length(text, language)
    if count * 1000 > bounds.speed * time:
        return f"{count:g} characters where {bounds.speed * time // 1000} can be read"
    words = len(text.split())
    if bounds.words and words * 60_000 > bounds.words * time:
        return f"{words} words where {bounds.words * time // 60_000} can be read"
    return ""


def _do(cue: Cue, after: int | None) -> str:
    pause = None if after is None else after - cue.end
    if pause:
        return f"say it shorter, or let it stand into the {seconds(pause)} that follow without a caption"
    return "say it shorter, or give it more time in the film"
