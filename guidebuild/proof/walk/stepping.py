"""A step: its flow in order, its methods side by side, and done or skipped where it is optional."""

from collections.abc import Iterable, Mapping

from guidebuild.device.states import State
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Fork, Item, Step
from guidebuild.proof.cells import Value
from guidebuild.proof.done import AllDone, Around
from guidebuild.proof.marks import marked
from guidebuild.proof.meeting import Difference, meet, sorted_out
from guidebuild.proof.mistake import Parting
from guidebuild.proof.proof import Passage
from guidebuild.proof.scene import Scene
from guidebuild.proof.shorthand import Shorthand
from guidebuild.proof.walk.acting import do_act
from guidebuild.proof.walk.checking import do_check
from guidebuild.proof.walk.record import Record
from guidebuild.source.span import Span


class Stepping:
    """Walks steps of one guide."""

    def __init__(self, shorthand: Shorthand, steps: Mapping[str, Step]) -> None:
        self.shorthand = shorthand
        self.steps = steps

    def walk(self, scene: Scene, stage: Stage, step: Step, reach: int, record: Record) -> None:
        """One step, in the configurations of `reach` in which it is shown."""
        configurations = scene.configurations
        shown = configurations.both(reach, configurations.bits(step.when))
        before, kept = scene.snapshot(reach), scene.keep()
        done = record.done = []
        if shown:
            around = Around(stage, step, shown)
            self._repeat_and_flow(scene, step, around, record, ())
            if step.optional:
                self._or_skip(scene, kept, around, record)
        after = scene.snapshot(reach)
        record.passages.append(Passage(step, stage, shown, before, after, AllDone(done)))

    def _repeat_and_flow(
        self,
        scene: Scene,
        step: Step,
        around: Around,
        record: Record,
        repeating: tuple[str, ...],
    ) -> None:
        """What `same-as` repeats is done first, in the state found here."""
        if step.same_as is not None:
            again = self.steps.get(step.same_as.text)
            if again is not None and again.id not in (*repeating, step.id):
                self._repeat_and_flow(scene, again, around, record, (*repeating, step.id))
        self._flow(scene, step.flow, around, record)

    def _flow(
        self, scene: Scene, flow: Iterable[Item | Fork], around: Around, record: Record
    ) -> None:
        for item in flow:
            match item:
                case Act():
                    do_act(scene, self.shorthand, item, around, record)
                case Check():
                    do_check(scene, item, around, record)
                case Fork():
                    self._fork(scene, item, around, record)
                case _:
                    pass

    def _fork(self, scene: Scene, fork: Fork, around: Around, record: Record) -> None:
        """Each method from one state; where several may be used they meet. Where none may, nothing happens."""
        configurations = scene.configurations
        start = met = scene.keep()
        done = 0
        for method in fork.methods:
            where = configurations.both(around.where, configurations.bits(method.when))
            if not where:
                continue
            branch = scene.branch(start)
            inside = Around(around.stage, around.step, where, method)
            self._flow(branch, method.items, inside, record)
            both = done & where
            met, differences = meet(
                scene.cells, met, branch.keep(), both, scene.without(where, done)
            )
            _tell(differences, fork, fork.span, around, record)
            done |= where
        scene.take(met)

    def _or_skip(
        self, scene: Scene, skipped: dict[str, Value], around: Around, record: Record
    ) -> None:
        met, differences = meet(scene.cells, scene.keep(), skipped, around.where, 0)
        _tell(differences, None, around.step.span, around, record)
        scene.take(met)


def _tell(
    differences: list[Difference], fork: Fork | None, span: Span, around: Around, record: Record
) -> None:
    for one in sorted_out(differences):
        record.partings.append(
            Parting(
                thing=marked(one.key),
                first=State(one.first),
                second=State(one.second),
                where=one.where,
                step=around.step,
                fork=fork,
                span=span,
                entered_from=record.entered_from,
                after=record.after,
            )
        )
