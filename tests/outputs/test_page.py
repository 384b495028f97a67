"""What the page says is what the proof walked: nothing lost, nothing made up."""

from collections import Counter

import pytest

from guidebuild.device.states import Kind
from guidebuild.guide.blocks.part import PartAct
from guidebuild.outputs.html.page.step import StepView
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Walked
from tests.outputs.demo import BATTERY, BOARD, GUIDES, HEAD, page, readings

STEPS = [pytest.param(guide, step.id, id=step.id) for guide in GUIDES for step in page(guide).steps]


def step_of(guide: str, id: str) -> StepView:
    """A step by its id."""
    return next(step for step in page(guide).steps if step.id == id)


@pytest.mark.parametrize(("guide", "id"), STEPS)
def test_every_move_is_said_once(guide: str, id: str) -> None:
    """Screws that are refitted by a sequence are said twice: started, then tightened."""
    step = step_of(guide, id)
    said = Counter(key for line in step.lines for key in line.things)
    moved = Counter(
        one.doing.thing
        for one in step.passage.walked
        if isinstance(one.doing, Move) and not _by_itself(guide, one)
    )
    assert said.keys() == moved.keys()
    for key in said:
        assert said[key] in (moved[key], 2 * moved[key])


def _by_itself(guide: str, one: Walked) -> bool:
    """A joint that opens or closes with its part, without a word of the author's."""
    move = one.doing
    assert isinstance(move, Move)
    if not isinstance(move.act, PartAct):
        return False
    written = {said.text for said in (*move.act.undo, *move.act.do_up)}
    thing = readings()[guide].device.things[move.thing]
    return thing.kind is Kind.JOINT and thing.id not in written


@pytest.mark.parametrize("guide", GUIDES)
def test_the_tray_is_empty_at_the_end(guide: str) -> None:
    main = [step for stage in page(guide).main for step in stage.steps]
    assert main[-1].tally.empty


@pytest.mark.parametrize("guide", GUIDES)
def test_a_screw_left_out_leads_to_its_step(guide: str) -> None:
    """Every hole that the guide works on stands in the list of what is left, with the step that puts its screw in."""
    view = page(guide)
    listed = {key: row for row in view.screws for key in row.keys}
    left = {(row.mark, "".join(piece.words for piece in row.place)): row for row in view.left}
    for key, row in listed.items():
        if row.captive:
            continue
        fits = [
            passage.step.id
            for passage in readings()[guide].proof.passages
            if passage.stage.remedy is None
            for one in passage.walked
            if isinstance(one.doing, Move)
            and one.doing.thing == key
            and one.doing.verb.value in ("start", "refit", "tighten")
        ]
        found = [
            one for (mark, place), one in left.items() if mark == row.number and row.group in place
        ]
        assert [one.step[0] for one in found] == [fits[0]], key


def test_the_way_back_opens_what_hides_the_hole() -> None:
    """A screw of the print head is reached by undoing door, cover screws and cover, and no step of the head."""
    row = next(row for row in page(HEAD).left if "Head screws" in row.place[0].words)
    undone = [id for id, _ in row.undo]
    assert undone[:4] == [
        "fit-the-battery-door",
        "fit-the-upper-cover-screws",
        "fit-the-lower-cover-screws",
        "close-the-cover",
    ]
    assert "tighten-the-head-screws" not in undone


def test_identical_screws_share_a_number() -> None:
    numbers: dict[str, set[str]] = {str(row.designation): set() for row in page(HEAD).screws}
    for row in page(HEAD).screws:
        numbers[str(row.designation)].add(row.number)
    assert all(len(some) == 1 for some in numbers.values())
    assert len({row.number for row in page(HEAD).screws}) < len(page(HEAD).screws)


@pytest.mark.parametrize("guide", GUIDES)
def test_no_letter_is_printed_on_a_plug(guide: str) -> None:
    one = readings()[guide]
    labels = [label for key, label in one.labels.of_thing.items()]
    assert len(labels) == len(set(labels))


def test_pockets_count_by_configuration() -> None:
    """The bracket's two screws are the plate's right screw again: one pocket, one or three screws."""
    pockets = step_of(HEAD, "open-the-plugs-of-the-head").tally.pockets
    counts = [
        (one.number, [(held.count, held.when.data if held.when else "") for held in one.held])
        for one in pockets
    ]
    assert ("4", [(1, "revision=a"), (3, "revision=b")]) in counts


def test_a_sequence_of_two_lengths_is_one_order() -> None:
    """Six cover screws of two lengths go in by one sequence: all started, then tightened in its order."""
    lines = step_of(BOARD, "tighten-the-cover-screws").lines
    fasteners = [line for line in lines if line.references]
    assert [line.references for line in fasteners] == [("1",), ("2",), ("1", "2")]
    assert [order for _, order in fasteners[-1].orders] == [1, 2, 3, 4, 5, 6]


def test_questions_are_only_those_that_change_something() -> None:
    assert [one.option for one in page(HEAD).questions] == ["revision", "supplied"]
    assert page(BATTERY).questions == ()


def test_cautions_stand_the_gravest_first() -> None:
    for guide in GUIDES:
        for step in page(guide).steps:
            levels = [
                ("danger", "warning", "caution", "notice").index(one.level) for one in step.panels
            ]
            assert levels == sorted(levels)
