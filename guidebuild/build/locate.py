"""Which step of a guide a place lies in."""

from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property

from guidebuild.guide.guide import Guide
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Stand:
    """A step's body in its file, with what a reader calls it."""

    start: int
    end: int
    stage: str
    step: str
    title: str


class Steps:
    """The steps of one guide by file and place; a shared stage's steps stand in their own file."""

    def __init__(self, guide: Guide) -> None:
        self._guide = guide

    @cached_property
    def by_file(self) -> dict[str, list[Stand]]:
        """The steps of each file, in order; asked only where there is something to tell."""
        found: dict[str, list[Stand]] = {}
        for stage in self._guide.stages:
            for step in stage.steps:
                body = step.body
                stand = Stand(body.start, body.end, stage.title.text, step.id, step.title.text)
                found.setdefault(body.source.path, []).append(stand)
        for stands in found.values():
            stands.sort(key=lambda stand: stand.start)
        return found

    def at(self, span: Span) -> Stand | None:
        """The step in whose body the span starts."""
        stands = self.by_file.get(span.source.path, [])
        at = bisect_right(stands, span.start, key=lambda stand: stand.start) - 1
        return stands[at] if at >= 0 and span.start <= stands[at].end else None
