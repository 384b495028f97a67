"""A step's scene in every configuration: who has form B must not be shown the parts of form A."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass

from guidebuild.device.screw import Screw
from guidebuild.draw.look import Scene
from guidebuild.draw.scene import scene_at
from guidebuild.draw.view import Drawn
from guidebuild.proof.proof import Passage

MOST = 4  # drawings of a step: more tell a reader nothing, so one is drawn for all
_MOST_SPLIT = 64


@dataclass(frozen=True, slots=True)
class Labelled:
    """What stands on leaders, by key, and the screws that belong in holes where a record has several."""

    labels: Mapping[str, str]
    screws: Mapping[str, Screw]


@dataclass(frozen=True, slots=True)
class Case:
    """The scene in some configurations."""

    where: int
    scene: Scene


def cases_at(
    drawn: Drawn,
    passage: Passage,
    labelled: Callable[[int], Labelled],
    parts: Iterable[int] = (),
    orders: Mapping[str, int] | None = None,
) -> tuple[Case, ...]:
    """The scenes of a step, each with all configurations in which it is the same.

    `parts`: sets of configurations that tell labels apart.
    """
    found: list[Case] = []
    for where in _alike(drawn, passage, parts):
        said = labelled(where)
        scene = scene_at(drawn, passage, said.labels, where, orders=orders, screws=said.screws)
        same = next((n for n, one in enumerate(found) if one.scene == scene), None)
        if same is None:
            found.append(Case(where, scene))
        else:
            found[same] = Case(found[same].where | where, scene)
    if 1 <= len(found) <= MOST:
        return tuple(found)
    said = labelled(passage.shown)
    scene = scene_at(drawn, passage, said.labels, orders=orders, screws=said.screws)
    return (Case(passage.shown, scene),)


def _alike(drawn: Drawn, passage: Passage, parts: Iterable[int]) -> list[int]:
    """The configurations that show the step, in sets in which nothing that is drawn differs."""
    values = (passage.before.values[key] for key in drawn.sight.keys)
    told = {bits for value in values if not isinstance(value, int) for bits in value.values()}
    told.update(one.where for one in passage.walked)
    told.update(parts)
    found = [passage.shown]
    for bits in sorted(told):
        halves = ((one & bits, one & ~bits) for one in found)
        found = [half for pair in halves for half in pair if half]
        if len(found) > _MOST_SPLIT:
            return [passage.shown]
    return found
