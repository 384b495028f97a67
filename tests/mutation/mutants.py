"""One mistake at a time, for every word of every act: dropped, doubled, swapped with its neighbour, re-targeted."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Any

from guidebuild.device.record import Device
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import acts as acts_of
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Fork, Step
from guidebuild.proof.shorthand import DO_UP, UNDO
from guidebuild.source.said import Said
from tests.mutation.rewriting import rewritten

FIELDS = ("undo", "targets", "do_up")


@dataclass(frozen=True)
class Mutant:
    """`how`: dropped, doubled, swapped, re-targeted; `what`: the mistake in words."""

    how: str
    what: str
    guide: Guide


def mutants(guide: Guide, device: Device) -> Iterator[Mutant]:
    """All of them, in document order."""
    for act in (act for step in guide.steps for act in acts_of(step)):
        yield from _in_one_act(guide, device, act)
    for one, other in _neighbours(guide):
        swapped = rewritten(guide, {id(one): [other], id(other): [one]})
        yield Mutant("swapped", f"{_say(one)} after {_say(other)}", swapped)


def _neighbours(guide: Guide) -> Iterator[tuple[Act, Act]]:
    """Acts that are done one after the other: not those of two methods, nor of a remedy and what stands above it."""
    ways = [
        [item for stage in stages for step in stage.steps for item in _first_ways(step)]
        for stages in _ways(guide)
    ]
    for way in ways:
        yield from pairwise(way)
    for step in guide.steps:
        for fork in step.flow:
            if isinstance(fork, Fork):
                for method in fork.methods[1:]:
                    yield from pairwise([one for one in method.items if isinstance(one, Act)])


def _ways(guide: Guide) -> list[list[Stage]]:
    """The main way, and each remedy."""
    main = [stage for stage in guide.stages if stage.remedy is None]
    return [main, *([stage] for stage in guide.stages if stage.remedy is not None)]


def _first_ways(step: Step) -> Iterator[Act]:
    """The acts of a step, of methods those of the first."""
    for item in step.flow:
        inside = item.methods[0].items if isinstance(item, Fork) else (item,)
        yield from (one for one in inside if isinstance(one, Act))


def _in_one_act(guide: Guide, device: Device, act: Act) -> Iterator[Mutant]:
    for field in FIELDS:
        words: tuple[Said, ...] = getattr(act, field, ())
        for at, word in enumerate(words):
            said = f"{_say(act)}: {word.text} in {field.replace('_', '-')}"
            around = words[:at], words[at + 1 :]
            yield _put("dropped", said, guide, act, field, (*around[0], *around[1]))
            yield _put("doubled", said, guide, act, field, (*around[0], word, word, *around[1]))
            if around[1]:
                turned = (*around[0], around[1][0], word, *around[1][1:])
                yield _put("swapped", said, guide, act, field, turned)
            other = _another(device, word)
            if other is not None:
                new = (*around[0], replace(word, text=other), *around[1])
                yield _put("re-targeted", f"{said}: {other} instead", guide, act, field, new)
    yield from _across(guide, device, act)


def _put(
    how: str, what: str, guide: Guide, act: Act, field: str, words: tuple[Said, ...]
) -> Mutant:
    change: dict[str, Any] = {field: words}
    spoilt = replace(act, **change)
    return Mutant(how, what, rewritten(guide, {id(act): [spoilt]}))


def _across(guide: Guide, device: Device, act: Act) -> Iterator[Mutant]:
    """The last thing undone comes after the part, the first thing done up before it."""
    if not isinstance(act, PartAct):
        return
    if act.undo:
        late = _alone(device, act, act.undo[-1], undone=True)
        acts = [replace(act, undo=act.undo[:-1]), late]
        yield Mutant(
            "swapped", f"{_say(act)} before {act.undo[-1].text}", rewritten(guide, {id(act): acts})
        )
    if act.do_up:
        early = _alone(device, act, act.do_up[0], undone=False)
        acts = [early, replace(act, do_up=act.do_up[1:])]
        yield Mutant(
            "swapped", f"{_say(act)} after {act.do_up[0].text}", rewritten(guide, {id(act): acts})
        )


def _alone(device: Device, act: Act, word: Said, undone: bool) -> Act:
    """A word of `undo` or `do-up` as an act of its own."""
    kind = device.things[device.names[word.text][0]].kind
    verb = (UNDO if undone else DO_UP)[kind]
    return Act(
        kind=kind,
        verb=verb,
        verb_span=word.span,
        targets=(word,),
        when=act.when,
        span=word.span,
        block=act.block,
    )


def _another(device: Device, word: Said) -> str | None:
    """The next entry of the record that is of the same kind: a group for a group, a hole for a hole."""
    alike = [name for name in device.names if _sort(device, name) == _sort(device, word.text)]
    if len(alike) < 2 or word.text not in alike:
        return None
    return alike[(alike.index(word.text) + 1) % len(alike)]


def _sort(device: Device, name: str) -> tuple[object, bool]:
    keys = device.names.get(name, ())
    kind = device.things[keys[0]].kind if keys else None
    return kind, name in device.groups


def _say(act: Act) -> str:
    return f"{act.verb.value} {_list(act.targets)}"


def _list(words: Sequence[Said]) -> str:
    return ", ".join(word.text for word in words)
