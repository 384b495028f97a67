"""A stage: steps under one heading; a remedy is a stage reached only from a check."""

from dataclasses import dataclass, field

from guidebuild.device.condition import Condition
from guidebuild.guide.prose import Picture, Prose
from guidebuild.guide.step import Step
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Remedy:
    """Which functions it mends, and where the reader goes on, or `stop`: what to do instead of going on."""

    functions: tuple[Said, ...]
    resume: Said | None  # step id
    tries: int | None
    stop: Said | None
    span: Span = field(compare=False)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stage:
    """`then`: when to give up and what to do. `file`: the content file whose steps these are."""

    id: str
    title: Said
    when: Condition | None = None
    remedy: Remedy | None = None
    then: Said | None = None
    steps: tuple[Step, ...] = ()
    shared: bool = False
    span: Span = field(compare=False)
    file: str = ""
    intro: tuple[Prose, ...] = ()  # what stands between its heading and its first step
    pictures: tuple[Picture, ...] = ()  # and the pictures there
