"""Captions came back with other times, or in another number, than they were sent.

The times belong to the film: in every language the caption stands while the hands do it. A translator who needs more
time says so; moving a caption in one language is found by nobody.

Source: common practice, no source; translators' programs have moved captions on their own (reference on localisation).
"""

from collections.abc import Iterator, Sequence

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category, Loudness
from guidebuild.translate.captions.measure import seconds
from guidebuild.translate.captions.slip import CueSlip
from guidebuild.translate.webvtt.cue import Cue

RULE = Rule(category=Category.TRANSLATION, loudness=Loudness.ERROR)

MESSAGE = "{what}"

HELP = "{do}"

MOST = 20  # milliseconds: less than a frame is another program's rounding


def check_returned(sent: Sequence[Cue], returned: Sequence[Cue]) -> Iterator[CueSlip]:
    """What differs; only the number of captions where that does, since then no times can be laid side by side."""
    if len(sent) != len(returned):
        what = f"{len(returned)} captions came back for {len(sent)}"
        do = "translate each caption in its own place; one with nothing to say may stay empty"
        yield CueSlip(max(len(returned) - 1, 0), {"what": what, "do": do})
        return
    for index, (old, new) in enumerate(zip(sent, returned, strict=True)):
        if max(abs(old.start - new.start), abs(old.end - new.end)) > MOST:
            times = f"{seconds(old.start)} to {seconds(old.end)}"
            what = f"this caption stood from {times}, and now from {seconds(new.start)} to {seconds(new.end)}"
            yield CueSlip(index, {"what": what, "do": f"put the times back: {times}"})
