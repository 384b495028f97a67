"""Stages that the model's other guides share, and that fit a draft as they stand."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER, Device
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import acts, checks
from guidebuild.guide.stage import Stage as Written
from guidebuild.plan.draft.closing import Closing
from guidebuild.plan.draft.script import Entry, Stage, Value
from guidebuild.plan.draft.work import Work

_OPENS = frozenset(
    {Verb.REMOVE, Verb.LOOSEN, Verb.DISCONNECT, Verb.RELEASE, Verb.LIFT, Verb.SWITCH_OFF}
)
_CLOSES = frozenset({Verb.REFIT, Verb.TIGHTEN, Verb.RECONNECT, Verb.CLOSE, Verb.LOWER})


@dataclass(frozen=True, slots=True)
class Known:
    """A shared stage as another guide uses it, with what its acts come to: key -> last verb."""

    stage: Written
    last: Mapping[str, Verb]
    first: Mapping[str, Verb]
    tests: frozenset[str]

    @property
    def path(self) -> str:
        """As a guide of the same device links it."""
        return "shared/" + self.stage.file.rpartition("/")[2]


def known(guides: Sequence[Guide], device: Device) -> list[Known]:
    """Each shared stage that the device's guides use, once."""
    found: dict[str, Known] = {}
    for guide in guides:
        for stage in guide.stages:
            simple = all(step.same_as is None for step in stage.steps)
            if stage.shared and stage.file not in found and simple:
                found[stage.file] = _known(stage, device)
    return list(found.values())


def _known(stage: Written, device: Device) -> Known:
    first: dict[str, Verb] = {}
    last: dict[str, Verb] = {}
    for key, verb in _moves(stage, device):
        first.setdefault(key, verb)
        last[key] = verb
    tests = frozenset(
        said.text for step in stage.steps for one in checks(step) for said in one.tests
    )
    return Known(stage, last, first, tests)


def _moves(stage: Written, device: Device) -> Iterator[tuple[str, Verb]]:
    for step in stage.steps:
        for act in acts(step):
            undo = act.undo if isinstance(act, PartAct) else ()
            do_up = act.do_up if isinstance(act, PartAct) else ()
            for said, verb in (
                *((said, Verb.RELEASE) for said in undo),
                *((said, act.verb) for said in act.targets),
                *((said, Verb.CLOSE) for said in do_up),
            ):
                for key in device.names.get(said.text, ()):
                    yield key, verb


def beginning(
    every: Sequence[Known], works: Sequence[Work], cases: Configurations
) -> tuple[Stage, list[Work]] | None:
    """The shared stage that opens most of what must be opened, and nothing else; and what is left to do."""
    best: tuple[int, Stage, list[Work]] | None = None
    for one in every:
        keys = set(one.last)
        mine = [work for work in works if set(work.keys) <= keys]
        opens = all(verb in _OPENS for verb in (*one.last.values(), *one.first.values()))
        covered = {key for work in mine for key in work.keys} == keys
        everywhere = all(work.where == cases.everywhere for work in mine)
        plain = one.stage.remedy is None and POWER in keys
        if opens and covered and everywhere and plain and (best is None or len(mine) > best[0]):
            stage = Stage(one.stage.title.text, shared=one.path)
            best = len(mine), stage, [work for work in works if work not in mine]
    return (best[1], best[2]) if best else None


@dataclass(frozen=True, slots=True)
class Ending:
    """A shared stage that closes the last of what was opened, with the remedies that go with its tests."""

    stages: tuple[Stage, ...]
    remedies: tuple[Stage, ...]
    skip: frozenset[int]
    tests: frozenset[str]


def ending(every: Sequence[Known], closings: Sequence[Closing]) -> Ending | None:
    """The one that closes most; None where none does just what is left at some point."""
    best: Ending | None = None
    for one in every:
        if one.stage.remedy is not None:
            continue
        keys = {key for key, verb in one.last.items() if verb in _CLOSES}
        lent = {key for key, verb in one.last.items() if verb not in _CLOSES}
        closes_only = all(one.first[key] in _CLOSES for key in one.first)
        skip = frozenset(c.task for c in closings if c.works and _keys(c) <= keys)
        closed = {key for c in closings if c.task in skip for key in _keys(c)}
        later = [c for c in closings if c.task not in skip and c.works and c.after & skip]
        fits = keys and closed == keys and not later and closes_only
        if fits and (best is None or len(skip) > len(best.skip)) and not lent & closed:
            stage = Stage(one.stage.title.text, shared=one.path)
            best = Ending((stage,), tuple(_remedies(every, one)), skip, one.tests)
    return best


def _keys(closing: Closing) -> set[str]:
    return {key for work in closing.works for key in work.keys}


def _remedies(every: Sequence[Known], of: Known) -> Iterator[Stage]:
    for one in every:
        remedy = one.stage.remedy
        if remedy is None or not {said.text for said in remedy.functions} & of.tests:
            continue
        said: dict[str, Value] = {"for": tuple(one.text for one in remedy.functions)}
        if remedy.resume is not None:
            said["resume"] = remedy.resume.text
        if remedy.tries is not None:
            said["tries"] = remedy.tries
        if remedy.stop is not None:
            said["stop"] = remedy.stop.text
        entry: Entry = {"id": one.stage.id, "remedy": said}
        if one.stage.then is not None:
            entry = {**entry, "then": one.stage.then.text}
        yield Stage(one.stage.title.text, shared=one.path, entry=entry)
