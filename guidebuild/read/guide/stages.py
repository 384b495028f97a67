"""Stages put together: shared ones drawn in, ids made unique in the guide."""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Step
from guidebuild.read.faults import duplicate_id
from guidebuild.read.guide.body import Body, RawStage
from guidebuild.read.guide.shared import SharedStage, SharedStages
from guidebuild.read.guide.slug import slug
from guidebuild.read.report import Report
from guidebuild.source.finding import Related
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(slots=True)
class Ids:
    """The ids of a guide's stages and steps so far, and where each was given."""

    report: Report
    taken: dict[str, Span] = field(default_factory=dict)

    def own(self, id_: str, span: Span, word: str) -> str:
        """An id that the guide's author can change: it must be free."""
        id_ = id_ or word
        if id_ in self.taken:
            self.report.tell(
                duplicate_id,
                span,
                lost=False,
                related=(Related(self.taken[id_], "taken here"),),
                id=id_,
                do=f"change the heading, or give it an `id:` in a `{word}` block",
            )
            return self.again(id_, span)
        self.taken[id_] = span
        return id_

    def again(self, id_: str, span: Span) -> str:
        """The id, numbered where it is taken: a stage that is drawn in twice."""
        number, free = 1, id_
        while free in self.taken:
            number += 1
            free = f"{id_}-{number}"
        self.taken[free] = span
        return free


@dataclass(slots=True)
class Drawn:
    """The stages of a guide, and the shared files that went into them."""

    stages: tuple[Stage, ...]
    shared: tuple[SharedStage, ...]


def stages(body: Body, title: Said, beside: str, shared: SharedStages) -> Drawn:
    """All stages in order. Steps that stand before any stage make one with the guide's title."""
    ids = Ids(shared.library.report)
    raw = list(body.stages)
    if body.loose:
        file = body.loose[0].file
        first = Stage(id=slug(title.text), title=title, span=title.span, file=file)
        raw.insert(0, RawStage(first, None, body.loose))
    drawn: dict[str, SharedStage] = {}
    found = []
    for one in raw:
        stage_id = ids.own(one.stage.id, one.stage.span, "stage")
        stage = replace(one.stage, id=stage_id)
        steps: list[Step] = []
        source = shared.get(one.link, beside) if one.link else None
        if source is not None:
            twice = source.path in drawn
            drawn[source.path] = source
            steps += _again(source.steps, ids) if twice else _own(source.steps, ids)
            stage = replace(stage, shared=True, file=source.path)
        steps += _own(one.steps, ids)
        found.append(replace(stage, steps=tuple(steps)))
    return Drawn(tuple(found), tuple(drawn.values()))


def _own(steps: list[Step] | tuple[Step, ...], ids: Ids) -> Iterator[Step]:
    for step in steps:
        id_ = ids.own(step.id, step.span, "step")
        yield step if id_ == step.id else replace(step, id=id_)


def _again(steps: tuple[Step, ...], ids: Ids) -> Iterator[Step]:
    """Steps that the guide has already: numbered, and what they repeat among themselves too."""
    new = {step.id: ids.again(step.id, step.span) for step in steps}
    for step in steps:
        same = step.same_as
        if same is not None and same.text in new:
            same = replace(same, text=new[same.text])
        yield replace(step, id=new[step.id], same_as=same)
