"""Closure, orders and depths against products and graphs of the literature, each as a record of its own.

Sources: the ten-part product of McGovern and Gupta (2004) and the forty-part transmission, as printed in Ren, Zhang,
Zhao, Xiao and Tian, EJOR 269 (2018) 647-660 (arcs of the transmission transcribed by eye from Fig. A1); Jackson's
11 tasks, Mertens' 7 tasks (Scholl's set) and the 18-part stapler from published instance files. Counts and depths
were computed from the printed data by whoever wrote the reference, independently of this code.
"""

import pytest

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER
from guidebuild.device.states import Kind
from guidebuild.plan.bench import Bench
from guidebuild.plan.choose import choose, without_detours
from guidebuild.plan.counting import orders, states
from guidebuild.plan.graph import Graph, Task, bits, numbers
from guidebuild.plan.order import batches
from guidebuild.plan.taking import take
from tests.plan.records import bench, device

# --- ten parts, with alternatives: 1, 8, 9 and 10 sit on 3 under 2, so one of the two must be off --------------

TEN = """
base: tray
parts:
  tray: Tray
  p2: Part 2
  p3: Part 3
  p1: {name: Part 1, mounted-on: p3, behind: p2}
  p8: {name: Part 8, mounted-on: p3, behind: p2}
  p9: {name: Part 9, mounted-on: p3, behind: p2}
  p10: {name: Part 10, mounted-on: p3, behind: p2}
  p4: {name: Part 4, mounted-on: p3, behind: p8}
  p7: {name: Part 7, mounted-on: p3, behind: p8}
  p5: {name: Part 5, mounted-on: p3, behind: p7}
  p6: {name: Part 6, mounted-on: p3, behind: p7}
"""
TEN_DEPTHS = {1: 2, 2: 1, 3: 1, 4: 3, 5: 4, 6: 4, 7: 3, 8: 2, 9: 2, 10: 2}
TEN_SECONDS = {1: 14, 2: 10, 3: 12, 4: 18, 5: 23, 6: 16, 7: 20, 8: 36, 9: 14, 10: 10}
TEN_LEAST = {1: 24, 2: 10, 3: 12, 4: 64, 5: 89, 6: 82, 7: 66, 8: 46, 9: 24, 10: 20}


@pytest.fixture(scope="module")
def ten() -> Bench:
    return bench(device(TEN))


def removals(of: Bench) -> int:
    """All tasks but taking the base off, and the switch that every record has."""
    return of.graph.all & ~bits([task for task in _beside(of) if task is not None])


def _beside(of: Bench) -> tuple[int | None, int | None]:
    return of.off(of.layout.device.base), of.opens(POWER)


def test_the_ten_part_product_comes_apart_in_48384_orders_over_265_states(ten: Bench) -> None:
    assert orders(ten.graph, removals(ten)) == 48_384
    assert len(states(ten.graph, removals(ten))) == 265


@pytest.mark.parametrize("part", TEN_DEPTHS)
def test_depth_of_each_of_ten_parts(ten: Bench, part: int) -> None:
    task = ten.off(f"p{part}")
    assert task is not None
    taken = take(ten, [task])
    assert taken is not None
    assert (taken.cost, taken.bound) == (TEN_DEPTHS[part], TEN_DEPTHS[part])


@pytest.mark.parametrize("part", TEN_LEAST)
def test_least_time_of_each_of_ten_parts(ten: Bench, part: int) -> None:
    seconds = {f"remove p{number}": cost for number, cost in TEN_SECONDS.items()}
    timed = Graph(
        tuple(Task(one.name, one.needs, None, seconds.get(one.name, 0)) for one in ten.graph.tasks)
    )
    found = choose(timed, 1 << (ten.off(f"p{part}") or 0))
    assert found is not None
    assert found.cost == TEN_LEAST[part]


# --- forty nodes: twelve components, twenty-eight fasteners ------------------------------------------------------

FORTY = """
base: stand
parts:
  stand: Stand
  c1: Inlet plug
  c2: Rear bearing cover
  c3: Speed sensor
  c4: Transmission cover
  c5: {name: Steel rim}
  c6: Input shaft bearing cover
  c7: Rear shell
  c8: {name: Front shell, behind: [c3, c10]}
  c9: {name: Intermediate shaft, behind: [c2, c4, c7]}
  c10: {name: Fork, behind: c6}
  c11: {name: Input shaft, behind: c8}
  c12: {name: Output shaft, behind: c8}
fasteners:
  f1: {holds: c1, screw: M6x20 hex, holes: 2}
  f2: {holds: c2, screw: M6x20 hex, holes: 4}
  f4: {holds: c4, screw: M6x20 hex, holes: 4}
  f5: {holds: c5, behind: c2, screw: M6x20 hex, holes: 4}
  f6: {holds: c6, behind: c9, screw: M6x20 hex, holes: 4}
  f7: {holds: c7, behind: c5, screw: M6x20 hex, holes: 10}
"""
REMOVALS = (3, 5, 1, 5, 10, 32, 21, 35, 27, 33, 36, 36)
COMPONENTS = (1, 1, 1, 1, 2, 6, 3, 9, 5, 7, 10, 10)
SECONDS = (74, 137, 10, 53, 194, 567, 360, 604, 434, 581, 612, 613)
OF_COMPONENTS = (5, 8, 10, 6, 12, 47, 39, 13, 21, 14, 8, 9)
OF_FASTENERS = {
    "f1": (33, 36), "f2": (29, 30, 34, 36), "f4": (12, 10, 9, 16), "f5": (13, 10, 15, 7),
    "f6": (22, 26, 20, 18), "f7": (13, 9, 12, 14, 8, 17, 13, 16, 11, 14),
}  # fmt: skip


@pytest.mark.parametrize("number", range(1, 13))
def test_depths_of_the_forty_part_transmission(number: int) -> None:
    of = bench(device(FORTY))
    taken = take(of, [of.off(f"c{number}") or 0])
    assert taken is not None
    keys = [key for act in taken.acts for key in act.opening.keys]
    parts = [key for key in keys if of.layout.device.things[key].kind is Kind.PART]
    assert len(keys) == REMOVALS[number - 1]
    assert len(parts) == COMPONENTS[number - 1] == taken.cost
    assert sum(map(_seconds, keys)) == SECONDS[number - 1]


def test_all_twenty_eight_fasteners_come_out_and_none_counts() -> None:
    of = bench(device(FORTY))
    wanted = [one for key in (f"c{n}" for n in range(1, 13)) if (one := of.off(key)) is not None]
    taken = take(of, wanted)
    assert taken is not None
    keys = [key for act in taken.acts for key in act.opening.keys]
    holes = [key for key in keys if of.layout.device.things[key].kind is Kind.FASTENER]
    assert (len(holes), taken.cost, sum(map(_seconds, keys))) == (28, 12, 695)


def test_orders_and_down_sets_of_the_transmission_one_by_one() -> None:
    """Each screw by itself; 179,890 states, counted and not listed."""
    of = bench(device(FORTY))
    apart = _one_by_one(of)
    assert len(states(apart, apart.all)) == 179_890
    assert orders(apart, apart.all) == 106_413_743_607_927_275_520_000


def _seconds(key: str) -> int:
    if key.startswith("c"):
        return OF_COMPONENTS[int(key[1:]) - 1]
    group, _, hole = key.partition(".")
    return OF_FASTENERS[group][int(hole) - 1]


def _one_by_one(of: Bench) -> Graph:
    """A task for each screw instead of one for each group; without the base."""
    slim, beside = without_detours(of.graph), _beside(of)
    first: dict[int, list[int]] = {}
    tasks: list[tuple[int, int]] = []
    for number, opening in enumerate(of.openings):
        for at in range(len(opening.keys) if number not in beside else 0):
            first.setdefault(number, []).append(len(tasks))
            tasks.append((number, at))
    return Graph(
        tuple(
            Task(
                of.openings[number].keys[at],
                tuple(
                    1 << one
                    for need in slim.tasks[number].needs
                    for whole in numbers(need)
                    for one in first[whole]
                ),
            )
            for number, at in tasks
        )
    )


# --- graphs without alternatives ---------------------------------------------------------------------------------

JACKSON = {1: (), 2: (1,), 3: (1,), 4: (1,), 5: (1,), 6: (2,), 7: (3, 4, 5), 8: (6,), 9: (7,),
           10: (8,), 11: (9, 10)}  # fmt: skip
MERTENS = {1: (), 2: (1,), 3: (2,), 4: (1,), 5: (2,), 6: (5,), 7: (4,)}


@pytest.mark.parametrize(
    ("arcs", "count", "sets"), [(JACKSON, 756, 52), (MERTENS, 45, 22)], ids=["Jackson", "Mertens"]
)
def test_orders_of_line_balancing_graphs(
    arcs: dict[int, tuple[int, ...]], count: int, sets: int
) -> None:
    record = "base: b\nparts:\n  b: Base\n" + "".join(
        f"  t{task}: {{name: Task {task}, behind: [{', '.join(f't{one}' for one in before)}]}}\n"
        if before
        else f"  t{task}: Task {task}\n"
        for task, before in arcs.items()
    )
    of = bench(device(record))
    assert orders(of.graph, removals(of)) == count
    assert len(states(of.graph, removals(of))) == sets


STAPLER = "3-2 3-1 4-5 4-8 5-7 5-6 6-9 7-9 8-6 10-12 11-12 13-12 14-1 14-4 15-12 16-15 17-15 18-10 18-11 18-13"
STAPLER_TOOLS = (3, 1, 2, 3, 4, 3, 3, 3, 3, 3, 1, 1, 1, 2, 4, 2, 2, 3)


def test_the_stapler_takes_four_changes_of_tool() -> None:
    needs: dict[int, list[int]] = {}
    for arc in STAPLER.split():
        before, after = map(int, arc.split("-"))
        needs.setdefault(after, []).append(1 << before - 1)
    graph = Graph(
        tuple(
            Task(str(part), tuple(needs.get(part, ())), str(tool))
            for part, tool in enumerate(STAPLER_TOOLS, 1)
        )
    )
    found = batches(graph, graph.all)
    assert found is not None
    assert (found.changes, found.exact) == (4, True)
    assert len(states(graph, graph.all)) == 2_438
    assert orders(graph, graph.all) == 21_227_005_800
    assert bits(list(numbers(sum(found.batches)))) == graph.all


def test_a_screw_is_loosened_where_it_is_captive() -> None:
    of = bench(device(
        "base: b\nparts: {b: Base, d: Door}\n"
        "fasteners: {s: {holds: d, screw: M3x8 pan TX10, captive: true, holes: 1}}\n"
    ))  # fmt: skip
    taken = take(of, [of.off("d") or 0])
    assert taken is not None
    assert [act.opening.verb for act in taken.acts] == [Verb.LOOSEN, Verb.REMOVE]
