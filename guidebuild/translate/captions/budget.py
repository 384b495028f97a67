"""What a translator is told of a caption before the work: how many characters there is time and room for."""

from dataclasses import replace

from guidebuild.translate.captions.limits import limits
from guidebuild.translate.captions.measure import seconds
from guidebuild.translate.segments.segment import Segment

_PAUSE = 500  # milliseconds: a shorter silence behind a caption is not worth telling


def with_budget(segment: Segment, language: str) -> Segment:
    """The segment with its caption's budget in a language among its notes; itself where it is no caption."""
    timed = segment.timed
    if timed is None:
        return segment
    bounds = limits(language)
    time = timed.end - timed.start
    room = min(bounds.speed * time // 1000, bounds.lines * bounds.line)
    said = f"caption of {seconds(time)}: at most {room} characters, {bounds.line} in each of {bounds.lines} lines"
    pause = (timed.next or timed.end) - timed.end
    more = f"; {seconds(pause)} without a caption follow" if pause >= _PAUSE else ""
    return replace(segment, notes=(*segment.notes, said + more))
