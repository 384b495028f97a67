"""The numbers of the steps: 1, 2, 3 on the main way; R1, R2 for what is done only when a check sends you."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from guidebuild.guide.guide import Guide
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Step


@dataclass(frozen=True, slots=True)
class Numbers:
    """`steps`: step id -> number; `stages`: stage id -> its first and last step's ids."""

    steps: Mapping[str, str]
    stages: Mapping[str, tuple[str, str]]

    def first_of(self, stage: str) -> str | None:
        """The id of a stage's first step; None where it has none."""
        return self.stages[stage][0] if stage in self.stages else None


def numbers(guide: Guide) -> Numbers:
    """Numbers in document order; a remedy's steps are counted apart, wherever it stands."""
    main = [stage for stage in guide.stages if stage.remedy is None]
    remedies = [stage for stage in guide.stages if stage.remedy is not None]
    steps = {step.id: str(n) for n, step in enumerate(_steps(main), start=1)}
    steps |= {step.id: f"R{n}" for n, step in enumerate(_steps(remedies), start=1)}
    ends = {s.id: (s.steps[0].id, s.steps[-1].id) for s in guide.stages if s.steps}
    return Numbers(steps, ends)


def _steps(stages: Sequence[Stage]) -> Iterator[Step]:
    return (step for stage in stages for step in stage.steps)
