"""What must be tried, when, and how: each function whose plug or contact was opened, before the covers go on.

Where a source inside the device can be mated while it lies open, functions are tried switched on; where it can't
(a mains plug whose housing must be shut first, a device without power), each plug is pulled at instead, and the
device is tried when it is closed.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.ends import is_soft
from guidebuild.device.things import Connector, Link, Part
from guidebuild.plan.bench import Bench, Needs
from guidebuild.plan.draft.closing import HARD, Closing
from guidebuild.plan.draft.work import Work
from guidebuild.plan.openings import links_across


@dataclass(frozen=True, slots=True)
class Trial:
    """A function to try in `where`; `links`: those that carry it and were opened, in the order of closing."""

    function: str
    links: tuple[str, ...]
    where: int


@dataclass(frozen=True, slots=True)
class Trials:
    """`live`: tried switched on, from `source`, while open. `first`: tasks closed before that.

    `open_`: tried while open. `fed`: carried by a source, tried when that is mated for good.
    """

    open_: tuple[Trial, ...]
    fed: tuple[Trial, ...]
    first: frozenset[int]
    source: Work | None


def is_outside(bench: Bench, key: str) -> bool:
    """Whether a plug leads to something that is no part of the device."""
    ends = bench.layout.ends
    thing = bench.layout.device.things[key]
    return isinstance(thing, Connector) and any(
        bench.layout.device.part(end).outside for end, _ in ends.of(thing)
    )


def trials(
    bench: Bench, needs: Needs, opened: Sequence[Work], closings: Sequence[Closing]
) -> Trials:
    """What the work makes necessary. A source that stays open is none that anything could be tried from."""
    closed = {key for one in closings for work in one.works for key in work.keys}
    inner = [
        work
        for work in opened
        if _is_source(bench, work) and not _outside(bench, work) and closed & set(work.keys)
    ]
    every = tuple(_all_trials(bench, opened, closed))
    sources = {key for work in inner for key in work.keys}
    fed = tuple(one for one in every if sources & set(one.links))
    open_ = tuple(one for one in every if set(one.links) - sources)
    carriers = {key for one in open_ for key in one.links} - sources
    tasks = frozenset(w.task for w in opened if w.task is not None and carriers & set(w.keys))
    first = closed_before(closings, tasks)
    first |= _screwed_on(bench, closings, first, carriers)
    source = next((one for one in inner if not _is_dangerous(bench, one)), None)
    if source is not None and open_:
        more = closed_before(closings, _hard_after(needs, opened, source)) | first
        more |= _screwed_on(bench, closings, more, carriers)
        if not _closes_over(bench, closings, more, carriers):
            return Trials(open_, fed, more, source)
    return Trials(open_, fed, first, None)


def _all_trials(bench: Bench, opened: Sequence[Work], closed: set[str]) -> list[Trial]:
    device = bench.layout.device
    found: dict[str, tuple[list[str], int]] = {}
    dead = {
        said.text
        for work in opened
        for key in work.keys
        if isinstance(thing := device.things[key], Link) and key not in closed
        for said in thing.carries
    }  # what goes through a plug that stays open can't work
    for work in reversed(opened):
        for key in work.keys:
            thing = device.things[key]
            carries = thing.carries if isinstance(thing, Link) and key in closed else ()
            for said in carries if not is_outside(bench, key) else ():
                links, where = found.get(said.text, ([], 0))
                found[said.text] = [*links, key], where | work.where
    order = [name for name in device.functions if name in found and name not in dead]
    return [Trial(name, tuple(found[name][0]), found[name][1]) for name in order]


def _is_source(bench: Bench, work: Work) -> bool:
    thing = bench.layout.device.things[work.keys[0]]
    return isinstance(thing, Connector) and thing.source


def _outside(bench: Bench, work: Work) -> bool:
    return is_outside(bench, work.keys[0])


def _is_dangerous(bench: Bench, work: Work) -> bool:
    """It guards something, or handling it is a danger by the record."""
    device = bench.layout.device
    key = work.keys[0]
    names = {
        one
        for hazard in device.hazards.values()
        if hazard.level == "danger"
        for said in hazard.when_handling
        for one in device.names.get(said.text, ())
    }
    return bool(bench.layout.guarding.named(key)) or key in names


def closed_before(closings: Sequence[Closing], tasks: frozenset[int]) -> frozenset[int]:
    """These and all that must be closed before them."""
    after = {one.task: one.after for one in closings}
    found: set[int] = set()
    waiting = [task for task in tasks if task in after]
    while waiting:
        task = waiting.pop()
        if task not in found:
            found.add(task)
            waiting += [one for one in after[task] if one in after]
    return frozenset(found)


def _screwed_on(
    bench: Bench, closings: Sequence[Closing], tasks: frozenset[int], carriers: set[str]
) -> frozenset[int]:
    """The screws and clips of what is fitted by then, so that it is not tried while it lies loose."""
    fitted = [
        w.keys[0] for c in closings if c.task in tasks for w in c.works if w.verb is Verb.REFIT
    ]
    things = bench.layout.device.things
    parts = [key for key in fitted if isinstance(things[key], Part)]
    links = {link.key for part in parts for link in links_across(bench.layout, part)}
    rigid = frozenset(
        one.task
        for one in closings
        if any(links & set(work.keys) and not _is_soft(bench, work) for work in one.works)
    )
    more = closed_before(closings, rigid | tasks)
    return frozenset() if _closes_over(bench, closings, more, carriers) else more


def _is_soft(bench: Bench, work: Work) -> bool:
    thing = bench.layout.device.things[work.keys[0]]
    return not isinstance(thing, Link) or is_soft(thing)


def _hard_after(needs: Needs, opened: Sequence[Work], source: Work) -> frozenset[int]:
    """What can't be closed any more once the source is mated, habits apart."""
    mine = 1 << (source.task or 0)
    tasks = [one.task for one in opened if one.task is not None]
    return frozenset(
        task
        for task in tasks
        if any(need.tasks & mine and need.why in HARD for need in needs[task])
    )


def _closes_over(
    bench: Bench, closings: Sequence[Closing], tasks: frozenset[int], carriers: set[str]
) -> bool:
    """Whether a cover of a plug that is to be tried would be shut by then."""
    things = bench.layout.device.things
    shut = {
        key
        for one in closings
        if one.task in tasks
        for work in one.works
        if isinstance(things[work.keys[0]], Part) and work.verb.value in ("refit", "lower")
        for key in work.keys
    }
    covers = {cover.part for key in carriers for cover in bench.layout.covers.of(key)}
    outer = {part for part in covers if not bench.layout.covers.behind(part)}
    return bool(outer & shut)
