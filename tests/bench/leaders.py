"""Where the numbers on drawings go: the share that finds a place, and the time that a view takes.

Run it: `python -m tests.bench.leaders`. All drawings of the guides in content/, and 200 random views as the tests have
them. Times are CPU seconds of one run, to be read beside each other only.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from statistics import median
from time import process_time

from guidebuild.draw.crossing import crosses
from guidebuild.draw.leaders import Leader
from guidebuild.draw.placing import place
from guidebuild.draw.svg import Box
from tests.draw.demo import guides
from tests.draw.views import VIEWS, a_view


@dataclass(frozen=True)
class View:
    """What was asked of a view, what found a place round its outline, and how long it took."""

    asked: int
    leaders: Sequence[Leader]
    outline: Box
    seconds: float


def random_views() -> list[View]:
    """The views of `tests/draw/views.py`."""
    found = []
    for seed in range(VIEWS):
        targets, outline, room = a_view(seed)
        start = process_time()
        leaders = place(targets, outline, room)
        found.append(View(len(targets), leaders, outline, process_time() - start))
    return found


def demo_views() -> list[View]:
    """Every drawing of the demo; the time is that of the whole drawing, its frame and leaders."""
    return [
        View(len(one.scene.references), one.placed.leaders, one.placed.frame.outline, one.seconds)
        for _, _, shown in guides()
        for one in shown
    ]


def faults(view: View) -> int:
    """Crossings, numbers on numbers, numbers on the outline."""
    bad = sum(one.cell.touches(view.outline) for one in view.leaders)
    for i, a in enumerate(view.leaders):
        for b in view.leaders[:i]:
            bad += crosses((a.bend, a.tip), (b.bend, b.tip)) + a.cell.touches(b.cell)
    return bad


def main() -> None:
    """Measure and print."""
    for name, views in (("demo", demo_views()), ("random", random_views())):
        asked = sum(view.asked for view in views)
        placed = sum(len(view.leaders) for view in views)
        times = sorted(view.seconds * 1000 for view in views)
        print(
            f"{name}: {len(views)} views, {placed} of {asked} numbers placed ({placed / asked:.2%}), "
            f"{sum(map(faults, views))} faults; median {median(times):.2f} ms, longest {times[-1]:.2f} ms a view"
        )


if __name__ == "__main__":
    main()
