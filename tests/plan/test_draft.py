"""For every part of both demo devices, in every configuration, a draft that passes all rules unedited."""

from pathlib import Path

import pytest

from guidebuild.build.drafting import Asked, drafted, put
from guidebuild.build.trouble import Trouble
from guidebuild.plan.draft.markdown import yaml
from tests.plan.drafted import CONTENT, Draft, copied, every
from tests.plan.records import demo

DEMO = demo()
PARTS = [(device.id, part.id) for device in DEMO.values() for part in device.parts]
GOALS = ("replace", "remove", "add", "inspect", "clean", "adjust")
BASES = {device.base for device in DEMO.values()}  # there from the start: never added
ALL = [(*one, goal) for one in PARTS for goal in GOALS if goal != "add" or one[1] not in BASES]
SEVERAL = [  # parts that lie apart, that sit on one another, that carry others, that feed the device
    ("larch-p2", ("battery", "print-head"), "replace"),
    ("larch-p2", ("cover", "print-head"), "replace"),
    ("larch-p2", ("main-board", "plug-plate", "motor"), "replace"),
    ("larch-p2", ("motor", "platen", "bracket"), "replace"),
    ("larch-p2", ("battery", "platen"), "remove"),
    ("larch-p2", ("keypad", "gap-sensor"), "remove"),
    ("larch-p2", ("motor", "battery"), "inspect"),
    ("brindle-e4", ("capacitor", "fan", "lamp"), "replace"),
    ("brindle-e4", ("lamp", "transformer"), "remove"),
    ("brindle-e4", ("fan", "front-panel"), "add"),
    ("alder-v3", ("spring", "valve-cone"), "clean"),
    ("alder-v3", ("cap", "valve-cone"), "add"),
    ("larch-p2", ("main-board", "print-head"), "add"),
    ("alder-v3", ("drain-cap", "shim-stack"), "replace"),
]


@pytest.fixture(scope="module")
def drafts(tmp_path_factory: pytest.TempPathFactory) -> dict[tuple[str, str, str], Draft]:
    root = copied(tmp_path_factory.mktemp("drafts"))
    wishes = [Asked(device, part, goal) for device, part, goal in ALL]
    return {(d.asked.device, d.asked.part, d.asked.goal): d for d in every(root, wishes)}


@pytest.mark.parametrize(("device", "part", "goal"), ALL)
def test_a_draft_passes_every_rule_unedited(
    drafts: dict[tuple[str, str, str], Draft], device: str, part: str, goal: str
) -> None:
    found = drafts[device, part, goal].found
    assert not [f"{one.span.line}: {one.rule}: {one.message}" for one in found]


def test_several_parts_at_once_pass_every_rule_unedited(tmp_path: Path) -> None:
    wishes = [
        Asked(device, first, goal, more=tuple(more)) for device, (first, *more), goal in SEVERAL
    ]
    for one in every(copied(tmp_path), wishes):
        said = [f"{each.span.line}: {each.rule}: {each.message}" for each in one.found]
        assert not said, one.asked
        for part in (one.asked.part, *one.asked.more):
            assert part in one.text.partition("---\n\n")[0]


def test_what_sits_on_a_part_comes_along() -> None:
    _, _, replaced = drafted(CONTENT, Asked("larch-p2", "print-head"))
    assert replaced.along == ("peel-bar", "gap-sensor")
    _, text, added = drafted(CONTENT, Asked("larch-p2", "print-head", "add"))
    assert added.along == ("peel-bar", "gap-sensor")
    assert "goal: {add: [print-head, peel-bar, gap-sensor]}" in text


def test_what_is_changed_itself_does_not_come_along() -> None:
    _, _, made = drafted(CONTENT, Asked("larch-p2", "main-board", more=("plug-plate",)))
    assert "plug-plate" not in made.along


@pytest.mark.parametrize(("device", "part"), PARTS)
def test_its_order_is_a_cheapest_one(
    drafts: dict[tuple[str, str, str], Draft], device: str, part: str
) -> None:
    made = drafts[device, part, "replace"].made
    assert made.cost == made.bound


def test_all_forms_of_a_kit_are_in_one_draft_and_one_form_in_another() -> None:
    _, both, made = drafted(CONTENT, Asked("larch-p2", "print-head"))
    _, bare, alone = drafted(CONTENT, Asked("larch-p2", "print-head", form="bare"))
    assert "when: supplied = bare" in both
    assert "supplied = bare" not in bare
    assert "supplied != bare" in bare
    assert (made.configurations, alone.configurations) == (4, 2)


def test_shared_stages_of_the_model_are_used() -> None:
    _, text, _ = drafted(CONTENT, Asked("larch-p2", "motor"))
    assert "# [Make the printer safe](shared/make-safe.md)" in text
    assert "# [Connect and close](shared/finish.md)" in text


def test_where_little_is_opened_they_are_not() -> None:
    _, text, _ = drafted(CONTENT, Asked("larch-p2", "roll"))
    assert "shared/" not in text


def test_energy_goes_first_and_earth_goes_on_first() -> None:
    _, text, _ = drafted(CONTENT, Asked("brindle-e4", "control-board"))
    order = [
        text.index(one)
        for one in (
            "switch-off: device", "disconnect: mains-plug", "release: stored-charge",
            "disconnect: live-tag", "disconnect: earth-tag", "exchange: control-board",
            "reconnect: earth-tag", "reconnect: live-tag", "tests: flash", "lower: cover",
            "reconnect: mains-plug", "switch-on: device",
        )
    ]  # fmt: skip
    assert order == sorted(order)


def test_every_step_has_a_place_for_its_picture() -> None:
    _, text, _ = drafted(CONTENT, Asked("larch-p2", "motor"))
    assert text.count("<!-- picture: ") == sum(line.startswith("## ") for line in text.splitlines())


def test_a_small_change_in_the_record_moves_few_lines(tmp_path: Path) -> None:
    root = copied(tmp_path)
    record = root / "devices/larch-p2/device.yaml"
    _, before, _ = drafted(root, Asked("larch-p2", "motor"))
    text = record.read_text(encoding="utf-8")
    wider = text.replace(
        "{upper: [69.2, 52.6], lower: [84, 68.5]}",
        "{upper: [69.2, 52.6], lower: [84, 68.5], side: [60, 60]}",
    )
    assert wider != text
    record.write_text(wider, encoding="utf-8")
    _, after, _ = drafted(root, Asked("larch-p2", "motor"))
    assert before == after
    record.write_text(text.replace("{name: Feed motor,", "{name: Stepper motor,"), encoding="utf-8")
    _, renamed, _ = drafted(root, Asked("larch-p2", "motor"))
    changed = [a for a, b in zip(before.splitlines(), renamed.splitlines(), strict=True) if a != b]
    assert all("eed motor" in line or "feed-motor" in line for line in changed)


def test_the_same_twice() -> None:
    asked = Asked("larch-p2", "print-head")
    assert drafted(CONTENT, asked)[1] == drafted(CONTENT, asked)[1]


def test_nothing_is_written_over(tmp_path: Path) -> None:
    there = tmp_path / "guide.md"
    there.write_text("mine", encoding="utf-8")
    with pytest.raises(Trouble, match="is there already"):
        put(there, "draft", force=False)
    assert there.read_text(encoding="utf-8") == "mine"
    put(there, "draft", force=True)
    assert there.read_text(encoding="utf-8") == "draft"


@pytest.mark.parametrize(
    ("asked", "words"),
    [
        (Asked("larch-p3", "motor"), "no device larch-p3"),
        (Asked("larch-p2", "engine"), "no part engine"),
        (Asked("larch-p2", "motor", kits=("x",)), "no kit x"),
        (Asked("larch-p2", "print-head", form="x"), "has a form x"),
        (Asked("larch-p2", "motor", more=("engine",)), "no part engine"),
        (Asked("larch-p2", "frame", "add"), "the base"),
    ],
)
def test_what_is_not_there_is_told_with_what_is(asked: Asked, words: str) -> None:
    with pytest.raises(Trouble, match=words):
        drafted(CONTENT, asked)


@pytest.mark.parametrize("word", ["a: b", "# x", "no, one", "- a", "it's", '"q"', "x: ", "~", ""])
def test_words_that_yaml_would_cut_are_quoted(word: str) -> None:
    (line,) = yaml({"expect": word})
    assert line == "expect: " + (
        '"' + word.replace('"', '\\"') + '"' if word not in ("no, one", "it's") else word
    )
