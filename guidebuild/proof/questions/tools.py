"""Which tools a guide needs, act by act: what the act says, else the record, else what fits the screw's drive."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cache

from guidebuild.device.acts import Verb
from guidebuild.device.record import Device
from guidebuild.device.things import Hole, Link, Thing
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
            move = walked.doing
            if isinstance(move, Move):
                for choices, drive in _of_move(proof.device.things[move.thing], move, fitting):
                    yield Needed(choices, move.thing, drive, move.step, walked.where, move.span)


@remembered
def without_tool(device: Device, tools: Mapping[str, Tool]) -> frozenset[str]:
    """The drives of a record's screws that no listed tool fits."""
    drives = {case.value.drive for hole in device.holes for case in hole.screw if case.value.drive}
    return frozenset(one for one in drives if not any(_fits(tool, one) for tool in tools.values()))


def uses(step: Step) -> Iterator[Use]:
    """What `tool` and `material` blocks of a step name, those of its methods too."""
    return (item for item in items(step) if isinstance(item, Use))


def _of_move(
    thing: Thing, move: Move, fitting: Callable[[str], tuple[str, ...]]
) -> Iterator[tuple[tuple[str, ...], str]]:
    """The choices of each tool that the act needs, and the drive that they are for."""
    said = move.act.with_ or (thing.with_ if isinstance(thing, Link) else ())
    if said:
        yield tuple([one.text for one in said]), ""
    elif isinstance(thing, Hole) and move.verb in _TURNED:
        for drive in dict.fromkeys([case.value.drive for case in thing.screw]):
            if drive:
                yield fitting(drive), drive


def _fits(tool: Tool, drive: str) -> bool:
    wanted = drive.replace(" ", "").casefold()
    return any(one.text.replace(" ", "").casefold() == wanted for one in tool.fits)
