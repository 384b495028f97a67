"""Every step of the demo guides has its locator: numbers placed, leaders apart, screws true to the record."""

import pytest

from guidebuild.draw.crossing import crosses
from guidebuild.draw.scene import shows, view_for, worked
from guidebuild.draw.screw import screw_symbols, shadow
from guidebuild.draw.view_symbols import view_symbols
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content
from tests.draw.demo import CONTENT, devices, guides, views
from tests.draw.reading import extent, of_class, tree


def test_every_step_that_works_on_the_device_is_shown() -> None:
    for guide, device, shown in guides():
        assert len(shown) >= 8, guide
        assert all(one.svg.startswith("<svg") for one in shown)
        assert views(device.id)


def test_every_reference_finds_its_place() -> None:
    asked = sum(len(one.scene.references) for _, _, shown in guides() for one in shown)
    found = sum(len(one.placed.leaders) for _, _, shown in guides() for one in shown)
    assert asked > 100
    assert found == asked


def test_no_leader_crosses_another_and_no_number_lies_on_the_device() -> None:
    for _, _, shown in guides():
        for one in shown:
            leaders = one.placed.leaders
            for i, a in enumerate(leaders):
                assert not a.cell.touches(one.placed.frame.outline), one.step
                for b in leaders[:i]:
                    assert not crosses((a.bend, a.tip), (b.bend, b.tip)), one.step
                    assert not a.cell.touches(b.cell), one.step


def test_drawings_are_well_formed_and_use_only_what_the_page_defines() -> None:
    for _, device, shown in guides():
        screws = {case.value for hole in device.holes for case in hole.screw}
        page = (
            "<svg>"
            + "".join(map(view_symbols, views(device.id).values()))
            + screw_symbols(*screws)
            + "</svg>"
        )
        defined = {node.get("id") for node in tree(page).iter() if node.get("id")}
        for one in shown:
            uses = {node.get("href", "")[1:] for node in tree(one.svg).iter("use")}
            assert uses <= defined, one.step


def test_the_work_of_a_step_is_heavy() -> None:
    for _, _, shown in guides():
        for one in shown:
            assert of_class(tree(one.svg), "now"), one.step


def test_a_locator_is_small() -> None:
    """Parts stand once in a page as symbols, so forty locators weigh little."""
    sizes = [len(one.svg.encode()) for _, _, shown in guides() for one in shown]
    assert sum(sizes) / len(sizes) < 5_000
    assert max(sizes) < 12_000


def test_every_screw_of_the_demo_is_as_long_as_designated() -> None:
    screws = {case.value for one in devices() for hole in one.holes for case in hole.screw}
    assert len(screws) >= 8
    for screw in screws:
        least, most = extent(shadow(screw), 0)
        length = most - max(least, 0.0) if screw.head == "countersunk" else most
        assert length == pytest.approx(float(screw.length or 0), abs=2e-3), screw.text


def test_what_a_step_works_on_is_in_the_view_that_was_chosen() -> None:
    content, _ = read_content(CONTENT)
    hidden: dict[str, set[str]] = {}
    for one in content.guides:
        drawings = views(one.device.id)
        for passage in prove(one.guide, one.device).passages:
            view = view_for(one.device, passage, drawings)
            if view is not None:
                keys = worked(passage)
                seen = [
                    k for k in keys if shows(one.device, one.device.views[view], drawings[view], k)
                ]
                assert seen, passage.step.id
                hidden.setdefault(one.guide.id, set()).update(set(keys) - set(seen))
    assert max(map(len, hidden.values()), default=0) < 8
