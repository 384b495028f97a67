"""Which tools a guide needs, act by act: what the act says, else the record, else what fits the screw's drive."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cache

from guidebuild.device.acts import Verb
from guidebuild.device.things import Hole, Link
from guidebuild.device.tool import Tool
from guidebuild.guide.blocks.use import Use
from guidebuild.guide.inside import items
from guidebuild.guide.step import Step
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof
from guidebuild.source.remembered import remembered
from guidebuild.source.span import Span

_TURNED = frozenset({Verb.REMOVE, Verb.LOOSEN, Verb.TIGHTEN, Verb.REFIT})  # `start` is done by hand


@dataclass(frozen=True, slots=True)
class Needed:
    """Any of `choices` (ids of tools.yaml) serves; none where no listed tool fits `drive`."""

    choices: tuple[str, ...]
    thing: str  # key; "" where a `tool` block names it
    drive: str
    step: Step
    where: int
    span: Span = field(compare=False)


@remembered
def tools_needed(proof: Proof, tools: Mapping[str, Tool]) -> tuple[Needed, ...]:
    """Each need of a tool, in document order; remedies too."""
    return tuple(_needed(proof, tools))


def _needed(proof: Proof, tools: Mapping[str, Tool]) -> Iterator[Needed]:
    fitting = cache(lambda drive: tuple(id_ for id_, tool in tools.items() if _fits(tool, drive)))
    for passage in proof.passages:
        for use in uses(passage.step):
            if use.what == "tool":
                for item in use.items:
                    yield Needed((item.text,), "", "", passage.step, passage.shown, item.span)
        for walked in passage.walked:
            if isinstance(walked.doing, Move):
                yield from _of_move(proof, walked.doing, walked.where, fitting)


def uses(step: Step) -> Iterator[Use]:
    """What `tool` and `material` blocks of a step name, those of its methods too."""
    return (item for item in items(step) if isinstance(item, Use))


def _of_move(
    proof: Proof, move: Move, where: int, fitting: Callable[[str], tuple[str, ...]]
) -> Iterator[Needed]:
    thing = proof.device.things[move.thing]
    said = move.act.with_ or (thing.with_ if isinstance(thing, Link) else ())
    if said:
        choices = tuple(one.text for one in said)
        yield Needed(choices, move.thing, "", move.step, where, move.span)
    elif isinstance(thing, Hole) and move.verb in _TURNED:
        for drive in dict.fromkeys(case.value.drive for case in thing.screw if case.value.drive):
            yield Needed(fitting(drive), move.thing, drive, move.step, where, move.span)


def _fits(tool: Tool, drive: str) -> bool:
    wanted = drive.replace(" ", "").casefold()
    return any(one.text.replace(" ", "").casefold() == wanted for one in tool.fits)
