"""Where a check may lead when what it expects is not so."""

from guidebuild.guide.blocks.check import Check
from guidebuild.guide.guide import Guide
from guidebuild.guide.stage import Stage


def remedies_of(guide: Guide, check: Check) -> tuple[Stage, ...]:
    """The remedies that a check names; where it names none and does not stop, those for what it tests."""
    named = {said.text for said in (check.if_not, *(fault.go for fault in check.faults)) if said}
    if named:
        return tuple(stage for stage in guide.stages if stage.remedy and stage.id in named)
    if check.stop is not None:
        return ()
    tested = {said.text for said in check.tests}
    return tuple(
        stage
        for stage in guide.stages
        if stage.remedy and tested & {said.text for said in stage.remedy.functions}
    )
