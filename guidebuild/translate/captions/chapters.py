"""The chapters of a film, from the times that steps show of it: each begins where its step's first piece does."""

from collections.abc import Iterator
from decimal import Decimal
from itertools import pairwise

from guidebuild.guide.blocks.video import Video
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import items
from guidebuild.translate.webvtt.cue import Captions, Cue


def chapters(guide: Guide, film: str) -> Captions | None:
    """Chapters of a film (its file's name) in the words of the guide's titles; None where no step shows it.

    In order of the times, as WebVTT wants them; a chapter ends where the next begins, or with its last piece.
    """
    found = sorted(_pieces(guide, film))
    if not found:
        return None
    ends = [min(end, after[0]) for (_, end, _), after in pairwise(found)]
    ends.append(found[-1][1])
    cues = (
        Cue(str(number), _milliseconds(start), _milliseconds(end), _escaped(title))
        for number, ((start, _, title), end) in enumerate(zip(found, ends, strict=True), start=1)
        if end > start
    )
    return Captions("", (), (), tuple(cues))


def _pieces(guide: Guide, film: str) -> Iterator[tuple[Decimal, Decimal, str]]:
    """From the start of a step's first piece to the end of its last one."""
    for step in guide.steps:
        shown = [one for one in items(step) if isinstance(one, Video) and _file(one, guide) == film]
        if shown:
            yield min(one.start for one in shown), max(one.end for one in shown), step.title.text


def _file(video: Video, guide: Guide) -> str:
    said = video.file or guide.video
    return said.text if said else ""


def _milliseconds(seconds: Decimal) -> int:
    return int(seconds * 1000)


def _escaped(title: str) -> str:
    return title.replace("&", "&amp;").replace("<", "&lt;")
