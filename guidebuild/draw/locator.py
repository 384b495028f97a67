"""The locator: the device's view at a step, with what is worked on in heavy line and numbers beside it."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from guidebuild.draw.cutout import Overview, cut_edge, overview
from guidebuild.draw.frame import WIDE, Frame
from guidebuild.draw.holes import Marks, hole_marks
from guidebuild.draw.layers import layers
from guidebuild.draw.leaders import Leader
from guidebuild.draw.look import End, Scene
from guidebuild.draw.marks import arrow_tip
from guidebuild.draw.placed import Placed, Unplaced, end_of, placed
from guidebuild.draw.runs import Run, Runs
from guidebuild.draw.scale_bar import at_foot, scale_bar
from guidebuild.draw.svg import Box, Point, circle, drawing, element, number, pair, path, text
from guidebuild.draw.view import Drawn

_NUMBER = 10.0  # height of numerals


@dataclass(frozen=True, slots=True)
class Locator:
    """A locator, drawn. It is written when all drawings of the page are known: what is alike stands there once."""

    placed: Placed
    box: Box
    device: Run
    holes: Run
    marks: Run  # holes of this step
    numbers: tuple[tuple[str, Run], ...]  # labels and their leaders
    bar: Run
    foot: float
    small: tuple[Overview, Run] | None  # beside a cut-out

    @property
    def unplaced(self) -> tuple[Unplaced, ...]:
        """References that found no place: to be said in words."""
        return self.placed.unplaced

    def written(self, runs: Runs, title: str, description: str = "") -> str:
        """The drawing (`svg.view`); it refers to the page's `runs`, `view_symbols` and `screw_symbols`."""
        where, outline = self.placed.frame, self.placed.frame.outline
        device = element("g", runs.written(self.device), transform=_transform(where))
        parts = [device, runs.written(self.holes), runs.written(self.marks)]
        if where.cut:
            parts = [_clipped(parts, outline), cut_edge(outline)]
        bar = at_foot(runs.written(self.bar), (outline.right, self.foot))
        parts += [self._numbered(runs), bar]
        if self.small is not None:
            small, run = self.small
            parts.append(small.markup(runs.written(run), where.region, outline))
        return drawing("view", self.box, *parts, title=title, description=description)

    def _numbered(self, runs: Runs) -> str:
        """All leaders, each with its label for the script; the height of numerals is said once."""
        said = (element("g", runs.written(run), data_label=label) for label, run in self.numbers)
        return element("g", *said, font_size=_NUMBER) if self.numbers else ""


def locator(drawn: Drawn, scene: Scene, runs: Runs) -> Locator:
    """The locator of a scene; what it may share with other drawings of the page is added to `runs`."""
    sketch = _sketch(drawn, scene)
    at, small = sketch.placed, sketch.small
    return Locator(
        placed=at,
        box=sketch.box,
        foot=sketch.foot,
        device=runs.add(sketch.layers),
        holes=runs.add(sketch.marks.still),
        marks=runs.add([sketch.marks.now]),
        numbers=tuple((one, runs.add([said])) for one, said in sketch.leaders),
        bar=runs.add([scale_bar(at.frame.scale)]),
        small=(small, runs.add([small.silhouette])) if small else None,
    )


@dataclass(frozen=True, slots=True)
class _Sketch:
    """All pieces of a locator."""

    placed: Placed
    box: Box
    foot: float  # where the scale bar stands
    layers: list[str]
    marks: Marks
    leaders: tuple[tuple[str, str], ...]
    small: Overview | None


@lru_cache(maxsize=4_000)  # guides of a device, and their translations, have many scenes in common
def _sketch(drawn: Drawn, scene: Scene) -> _Sketch:
    at = placed(drawn, scene)
    small = overview(drawn) if at.frame.cut else None
    foot = max([leader.cell.bottom for leader in at.leaders] + [at.frame.outline.bottom]) + 16
    return _Sketch(
        placed=at,
        box=_sheet(at, foot, small),
        foot=foot,
        layers=layers(drawn, scene, at.frame),
        marks=hole_marks(scene, at.frame),
        leaders=tuple(_leaders(drawn, scene, at)),
        small=small,
    )


def locator_svg(drawn: Drawn, scene: Scene, title: str, description: str = "") -> str:
    """A locator that is the only one of its page."""
    runs = Runs()
    return locator(drawn, scene, runs).written(runs, title, description)


def _sheet(at: Placed, foot: float, small: Overview | None) -> Box:
    """All that is drawn: outline, numbers, the scale bar at the foot, and what is beside a cut-out."""
    top = min([leader.cell.y for leader in at.leaders] + [-3.0]) - 3
    high = foot + 6
    if small is not None:
        high = max(high, small.bottom(at.frame.outline) + 4)
    return Box(0, top, WIDE, high - top)


def _transform(where: Frame) -> str:
    x, y = where.at((0, 0))
    return f"translate({number(x)} {number(y)}) scale({number(where.scale)})"


def _leaders(drawn: Drawn, scene: Scene, at: Placed) -> Iterator[tuple[str, str]]:
    """Each label with its leader."""
    marked = {hole.key for hole in scene.holes}
    for leader in at.leaders:
        reference = scene.references[leader.target]
        end = reference.end if reference.thing in marked else end_of(drawn, reference)
        yield leader.label, _leader(leader, end)


def _clipped(parts: list[str], outline: Box) -> str:
    """An inner `svg` cuts off at its edge without needing an id."""
    box = (outline.x, outline.y, outline.width, outline.height)
    return element(
        "svg",
        *parts,
        x=outline.x,
        y=outline.y,
        width=outline.width,
        height=outline.height,
        viewBox=" ".join(map(number, box)),
    )


def _leader(leader: Leader, end: End) -> str:
    outer, bend, tip = map(_near, (leader.outer, leader.bend, leader.tip))
    line = path("ldr", f"M{pair(outer)}H{number(bend[0])}L{pair(tip)}")
    mark = circle("tip", tip, 1.05) if end is End.DOT else arrow_tip(tip, leader.angle)
    return line + mark + text("num", _near((leader.middle, leader.outer[1] - 2.1)), leader.label)


def _near(point: Point) -> Point:
    """To a hundredth of a unit: nobody sees more, and a page has many."""
    return round(point[0], 2), round(point[1], 2)
