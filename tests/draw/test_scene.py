"""What a view shows at a step: fitted, worked on, lifted or off, live, open, empty."""

import pytest

from guidebuild.device.acts import Verb
from guidebuild.device.states import State
from guidebuild.draw.locator import locator_svg
from guidebuild.draw.look import End, HoleLook, Look, Scene
from guidebuild.draw.placed import placed
from guidebuild.draw.scene import scene_at, view_for, worked
from guidebuild.draw.view import Drawn, read_view
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Step
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage, Snapshot, Walked
from tests.draw.reading import of_class, tree
from tests.draw.records import SPAN, device, said, view_of_file, view_of_outlines

VIEW = view_of_outlines()
DEVICE = device(VIEW)
DRAWN = read_view(DEVICE, VIEW, None)
LABELS = {"board": "A", "plug": "P1", "screws.a": "1", "screws.b": "1"}
STEP = Step(id="step", title=said("Step"), span=SPAN, body=SPAN)
STAGE = Stage(id="stage", title=said("Stage"), span=SPAN, steps=(STEP,))


def passage(*acts: tuple[Verb, str], **states: State) -> Passage:
    """A step that does these acts, entered with everything in but for `states` (`screws_a` is `screws.a`)."""
    values: dict[str, int] = {key: int(State.IN) for key in DEVICE.things}
    values |= {key.replace("_", "."): int(state) for key, state in states.items()}
    before = Snapshot(values, 1)
    moves = tuple(
        Walked(Move(verb, key, _act(verb, key), STEP, SPAN), STEP, STAGE, 1, before)
        for verb, key in acts
    )
    return Passage(STEP, STAGE, 1, before, before, moves)


def _act(verb: Verb, key: str) -> Act:
    kind = DEVICE.things[key].kind
    return Act(kind=kind, verb=verb, verb_span=SPAN, targets=(said(key),), span=SPAN, block=SPAN)


def scene(at: Passage, drawn: Drawn = DRAWN) -> Scene:
    return scene_at(drawn, at, LABELS)


def holes(found: Scene) -> dict[str, HoleLook]:
    return {hole.key: hole.look for hole in found.holes}


def test_nothing_touched_is_fitted_with_its_screws_in() -> None:
    found = scene(passage((Verb.DISCONNECT, "plug")))
    assert found.looks == {"base": Look.FITTED, "board": Look.FITTED, "plug": Look.NOW}
    assert set(holes(found).values()) == {HoleLook.SCREW}


def test_the_work_of_the_step() -> None:
    found = scene(
        passage((Verb.REMOVE, "screws.a"), (Verb.REMOVE, "screws.b"), (Verb.REMOVE, "board"))
    )
    assert found.looks["board"] is Look.NOW
    assert set(holes(found).values()) == {HoleLook.NOW}
    assert [(one.label, one.thing, one.end) for one in found.references] == [
        ("1", "screws.a", End.ARROW),
        ("1", "screws.b", End.ARROW),
        ("A", "board", End.DOT),
    ]


def test_screws_out_leave_empty_holes() -> None:
    found = scene(passage((Verb.DISCONNECT, "plug"), screws_a=State.OUT))
    assert holes(found) == {"screws.a": HoleLook.EMPTY, "screws.b": HoleLook.SCREW}


@pytest.mark.parametrize("state", [State.OUT, State.HALF, State.WORN])
def test_what_is_lifted_or_off_takes_along_what_sits_on_it(state: State) -> None:
    found = scene(passage((Verb.REMOVE, "screws.a"), board=state))
    assert (
        found.looks["plug"] is Look.FITTED
    )  # the screw is worked at the board: it lies on the bench
    found = scene(passage((Verb.REMOVE, "base"), board=state))
    assert found.looks["board"] is Look.AWAY
    assert found.looks["plug"] is Look.HIDDEN


def test_an_open_plug_shows_its_pins() -> None:
    found = scene(passage((Verb.REMOVE, "screws.a"), plug=State.OUT))
    assert found.looks["plug"] is Look.OPEN
    pins = of_class(tree(f"{locator_svg(DRAWN, found, 'open')}"), "ink", "circle")
    assert len(pins) >= 2


@pytest.mark.parametrize("state", [State.LEFT, State.ABSENT])
def test_what_is_not_there_is_not_drawn(state: State) -> None:
    found = scene(passage((Verb.REMOVE, "board"), screws_a=state, plug=state))
    assert found.looks["plug"] is Look.HIDDEN
    assert list(holes(found)) == ["screws.b"]


def test_what_is_unknown_counts_as_in() -> None:
    found = scene(passage((Verb.DISCONNECT, "plug"), board=State.IN | State.HALF | State.OUT))
    assert found.looks["board"] is Look.FITTED


def test_work_on_the_bench_is_no_work_on_the_view() -> None:
    at = passage((Verb.RENEW, "board"), (Verb.EXCHANGE, "shield"))
    assert worked(at) == ()
    assert view_for(DEVICE, at, {"inside": DRAWN}) is None


def test_a_step_on_what_the_view_does_not_show_has_no_view() -> None:
    assert view_for(DEVICE, passage((Verb.REMOVE, "shield")), {"inside": DRAWN}) is None
    assert view_for(DEVICE, passage((Verb.REMOVE, "board")), {"inside": DRAWN}) == "inside"


def test_a_face_of_the_bench_marks_only_its_own_acts() -> None:
    at = passage((Verb.REMOVE, "screws.a"), (Verb.REMOVE, "screws.b"))
    found = scene_at(DRAWN, at, LABELS, only={"screws.a"})
    assert holes(found) == {"screws.a": HoleLook.NOW, "screws.b": HoleLook.SCREW}
    assert [one.thing for one in found.references] == ["screws.a"]


def test_order_of_tightening_stands_in_squares() -> None:
    at = passage(
        (Verb.REFIT, "screws.a"), (Verb.REFIT, "screws.b"), screws_a=State.OUT, screws_b=State.OUT
    )
    found = scene_at(DRAWN, at, LABELS, orders={"screws.b": 1, "screws.a": 2})
    drawing = tree(locator_svg(DRAWN, found, "order"))
    assert [node.text for node in of_class(drawing, "ord")] == ["2", "1"]
    assert len(of_class(drawing, "box")) == 2


def test_a_screw_that_the_view_draws_itself_is_placed_there() -> None:
    view = view_of_file()
    svg = (
        '<svg viewBox="0 0 80 100"><g id="base"><rect width="80" height="100"/></g>'
        '<g id="screws.a"><circle cx="30" cy="40" r="3"/></g></svg>'
    )
    drawn = read_view(device(view), view, svg)
    found = scene_at(drawn, passage((Verb.REMOVE, "screws.a")), LABELS)
    assert {hole.key: hole.at for hole in found.holes}["screws.a"] == pytest.approx(
        (30, 40), abs=0.01
    )
    assert found.looks["screws.a"] is Look.HIDDEN  # the tool draws it, by its state


def test_small_things_on_a_large_view_are_cut_out() -> None:
    view = view_of_file((800, 900))
    svg = (
        '<svg viewBox="0 0 800 900"><g id="base"><rect width="800" height="900"/></g><g id="board">'
        '<rect x="10" y="10" width="60" height="50"/></g></svg>'
    )
    drawn = read_view(device(view), view, svg)
    at = passage((Verb.REMOVE, "screws.a"), (Verb.REMOVE, "screws.b"))
    found = scene_at(drawn, at, LABELS)
    where = placed(drawn, found)
    assert where.frame.cut
    assert where.frame.scale > 1
    assert len(where.leaders) == 2
    inner = [node for node in tree(locator_svg(drawn, found, "detail")).iter("svg")][1:]
    assert len(inner) == 1  # clipped without an id


def test_a_view_without_anything_is_still_a_drawing() -> None:
    view = view_of_file()
    drawn = read_view(device(view), view, "")
    assert tree(locator_svg(drawn, Scene(), "empty")).get("role") == "img"
