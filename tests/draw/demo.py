"""Every drawing of the guides in content/, as the page has them: one for each form in which a step looks different."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from time import process_time

from guidebuild.device.record import Device
from guidebuild.draw.cases import Labelled, cases_at
from guidebuild.draw.locator import locator_svg
from guidebuild.draw.look import Scene
from guidebuild.draw.placed import Placed, placed
from guidebuild.draw.scene import view_for
from guidebuild.draw.view import Drawn, read_view
from guidebuild.proof.proof import Proof
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content

CONTENT = Path(__file__).parents[2] / "content"


@dataclass(frozen=True)
class Shown:
    """One step as drawn."""

    step: str
    drawn: Drawn
    scene: Scene
    placed: Placed
    svg: str
    seconds: float  # to place its numbers


@cache
def views(device: str) -> dict[str, Drawn]:
    record = next(one for one in devices() if one.id == device)
    folder = CONTENT / record.folder
    return {
        id: read_view(
            record,
            view,
            (folder / view.file.text).read_text(encoding="utf-8") if view.file else None,
        )
        for id, view in record.views.items()
    }


@cache
def guides() -> list[tuple[str, Device, list[Shown]]]:
    content, _ = read_content(CONTENT)
    return [
        (one.guide.id, one.device, list(drawn_steps(one.device, prove(one.guide, one.device))))
        for one in content.guides
    ]


def devices() -> list[Device]:
    content, _ = read_content(CONTENT)
    return [one.device for one in content.guides]


def drawn_steps(device: Device, proof: Proof) -> Iterator[Shown]:
    labels = {key: str(n % 30) for n, key in enumerate(device.things)}
    for passage in proof.passages:
        view = view_for(device, passage, views(device.id))
        if view is not None:
            drawn = views(device.id)[view]
            for case in cases_at(drawn, passage, lambda where: Labelled(labels, {})):
                start = process_time()
                at = placed(drawn, case.scene)
                seconds = process_time() - start
                svg = locator_svg(drawn, case.scene, passage.step.id)
                yield Shown(passage.step.id, drawn, case.scene, at, svg, seconds)
