"""Blocks that come again in the same words: made of what the first one said, each with its own places."""

from pathlib import Path

import pytest

from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import items
from guidebuild.read.content import read_content
from guidebuild.read.guide import block
from guidebuild.read.guide.moulds import Moulds
from guidebuild.read.yaml.read import read_entries
from tests.language.places import with_places

CONTENT = Path(__file__).resolve().parents[2] / "content"


@pytest.fixture
def moulds(monkeypatch: pytest.MonkeyPatch) -> Moulds:
    """None kept yet."""
    new = Moulds()
    monkeypatch.setattr(block, "_MOULDS", new)
    return new


def guides() -> list[Guide]:
    """The demo, read."""
    return [one.guide for one in read_content(CONTENT)[0].guides]


def test_the_second_reading_says_and_stands_as_the_first(moulds: Moulds) -> None:
    first, second = guides(), guides()
    assert list(map(with_places, first)) == list(map(with_places, second))


def test_the_second_reading_is_made_of_moulds(
    moulds: Moulds, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = list(map(with_places, guides()))
    read: list[str] = []
    ask = read_entries

    def asked(*of: object) -> object:
        read.append(str(of[0]))
        return ask(*of)  # type: ignore[arg-type]

    monkeypatch.setattr(block, "read_entries", asked)
    assert list(map(with_places, guides())) == before
    assert len(read) < sum(1 for guide in guides() for step in guide.steps for _ in items(step)) / 4


def test_a_block_with_a_fault_is_told_each_time(moulds: Moulds, tmp_path: Path) -> None:
    (tmp_path / "devices" / "rack").mkdir(parents=True)
    (tmp_path / "guides" / "rack").mkdir(parents=True)
    record = "device: rack\nname: Rack\nbase: frame\nparts: {frame: Frame, lid: Lid}\n"
    (tmp_path / "devices" / "rack" / "device.yaml").write_text(record)
    bad = "```part\nremove: lid\nsuport: By hand.\n```\n\n"
    head = "---\ntitle: Look\ndevice: rack\ngoal: {inspect: lid}\n---\n\n# Open\n\n## Open it\n\n"
    (tmp_path / "guides" / "rack" / "look.md").write_text(head + bad + bad)
    found = read_content(tmp_path)[1]
    assert [(one.rule, one.span.line) for one in found] == [
        ("unknown-key", 13),
        ("unknown-key", 18),
    ]
