"""A finding with what a reader needs beside it: how loud it is, whose guide, which step."""

from dataclasses import dataclass

from guidebuild.source.finding import Finding, Loudness


@dataclass(frozen=True, slots=True)
class Slip:
    """`guides`: paths of the guides in which it was found (several for a shared stage, none for a record).

    `stage` and `step_title` are headings as the reader sees them, `step` the step's id; empty outside a step.
    """

    finding: Finding
    loudness: Loudness
    guides: tuple[str, ...] = ()
    stage: str = ""
    step: str = ""
    step_title: str = ""

    @property
    def sort_key(self) -> tuple[object, ...]:
        """Order of a report: path, start, end, rule, message, guides."""
        return (*self.finding.sort_key, self.guides)
