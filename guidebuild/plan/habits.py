"""What a careful person holds to besides what the record asks. All of it is common practice, no source.

Energy goes first: the switch, the plugs that feed from outside, then the other sources and all that the device
stores, each as soon as a hand gets there. Screws come out before clips are levered. Plugs are opened before the
part that they tie is unscrewed, so that nothing hangs loose on its cables. A habit that would leave no way to
the goal is dropped.
"""

from collections.abc import Iterator

from guidebuild.device.ends import STAY_OPEN, is_soft
from guidebuild.device.record import POWER
from guidebuild.device.things import Connector, Store
from guidebuild.plan.bench import Bench, Need, Needs
from guidebuild.plan.choose import choose
from guidebuild.plan.graph import Tasks, bits, numbers
from guidebuild.plan.openings import links_across


def always(bench: Bench) -> Tasks:
    """The switch, and every plug that feeds the device from outside: off whatever the work is."""
    layout = bench.layout
    if not layout.sources:
        return 0
    outside = (
        source.key
        for source in layout.sources
        if any(layout.device.part(end).outside for end, _ in layout.ends.of(source))
    )
    return bench.numbered([POWER, *outside])


def with_habits(bench: Bench, goal: Tasks, done: Tasks, early: Tasks = 0) -> Needs:
    """The needs of all tasks, habits among them. `early`: done as soon as all energy is gone."""
    needs = bench.needs
    for task, first in (*_plugs_first(bench), *_screws_first(bench)):
        more = tuple(Need(1 << one, bench.openings[one].where, "habit") for one in numbers(first))
        tried = tuple(
            (*each, *more) if number == task else each for number, each in enumerate(needs)
        )
        if not goal & ~bench.with_needs(tried).reachable(bench.graph.all, done):
            needs = tried
    needs = _isolated(bench, needs, goal, done)
    for task in numbers(early):
        needs = _before_all(bench, needs, 1 << task, done)
    return needs


def _screws_first(bench: Bench) -> Iterator[tuple[int, Tasks]]:
    """A clip or hook waits for the screws between its two parts."""
    layout = bench.layout
    for joint in layout.device.joints:
        task = bench.opens(joint.key)
        ends = {end for end, _ in layout.ends.of(joint)}
        if task is not None and joint.joint not in STAY_OPEN and not is_soft(joint):
            screws = (
                hole.key
                for hole in layout.device.holes
                if ends <= {end for end, _ in layout.ends.of(hole)}
            )
            yield task, bench.numbered(screws)


def _plugs_first(bench: Bench) -> Iterator[tuple[int, Tasks]]:
    """What holds a part that can't be lifted waits for its plugs."""
    for part in bench.layout.device.parts:
        if bench.opens(part.key) is None or bench.opens(part.key) != bench.off(part.key):
            continue
        links = links_across(bench.layout, part.key)
        plugs = bench.numbered(link.key for link in links if is_soft(link))
        for task in numbers(bench.numbered(link.key for link in links if not is_soft(link))):
            if plugs:
                yield task, plugs


def _isolated(bench: Bench, needs: Needs, goal: Tasks, done: Tasks) -> Needs:
    """Before anything else the switch, then plugs from outside, then other sources and stores."""
    chosen = choose(bench.with_needs(needs), goal & ~done, done)
    if chosen is None:
        return needs
    power = always(bench) & bench.numbered([POWER]) & ~done
    outside = always(bench) & ~power & ~done
    rest = bits([one for one in numbers(chosen.tasks) if is_energy(bench, one)])
    for first in (power, outside, rest & ~power & ~outside):
        needs = _before_all(bench, needs, first, done)
    return needs


def is_energy(bench: Bench, task: int) -> bool:
    """Whether a task switches off, unplugs a source or empties a store."""
    thing = bench.layout.device.things[bench.openings[task].keys[0]]
    return isinstance(thing, Store) or (isinstance(thing, Connector) and thing.source)


def _before_all(bench: Bench, needs: Needs, first: Tasks, done: Tasks) -> Needs:
    """Whatever is not needed for reaching `first` waits for it."""
    way = choose(bench.with_needs(needs), first, done) if first else None
    if way is None:
        return needs
    everywhere = bench.layout.everywhere
    more = tuple(Need(1 << one, everywhere, "isolated") for one in numbers(first))
    return tuple(
        each if way.tasks >> task & 1 else (*each, *more) for task, each in enumerate(needs)
    )
