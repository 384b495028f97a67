"""Why there is no way to a part: things of which each waits for the next, until the last waits for the first."""

from guidebuild.device.layout import Layout
from guidebuild.device.record import Device
from guidebuild.plan.bench import Bench
from guidebuild.plan.draft.cases import cases_of
from guidebuild.plan.graph import numbers

_WHY = {
    "hidden": "lies behind",
    "held": "is held by",
    "guarded": "is guarded by",
    "drained": "is drained through",
    "filled": "is filled by",
    "fed": "is fed through",
    "live": "is live until",
}


def circle(device: Device, part: str) -> list[str]:
    """`end-cap is guarded by oil`, `oil lies behind end-cap`; empty where nothing goes round."""
    cases = cases_of(device)
    bench = Bench(Layout(device, cases.bits, cases.everywhere))
    task = bench.off(part)
    reached = bench.graph.reachable(bench.graph.all)
    way: list[tuple[int, str]] = []
    while task is not None and not reached >> task & 1:
        if task in (one for one, _ in way):
            return [words for _, words in way[[one for one, _ in way].index(task) :]]
        need = next(need for need in bench.needs[task] if not need.tasks & reached)
        after = next(iter(numbers(need.tasks)), None)
        if after is None:
            return []
        names = [", ".join(_ids(bench, one)) for one in (task, after)]
        way.append((task, f"{names[0]} {_WHY.get(need.why, 'waits for')} {names[1]}"))
        task = after
    return []


def _ids(bench: Bench, task: int) -> list[str]:
    return [bench.layout.device.things[key].id for key in bench.openings[task].keys]
