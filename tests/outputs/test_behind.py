"""Names in another language: one whose source went on is told at the head of the page, with the source's own."""

import shutil
from pathlib import Path

import pytest

from guidebuild.build.translations import translation
from guidebuild.outputs.html.page.guide import GuideView, guide_view
from guidebuild.outputs.html.page.reading import reading
from guidebuild.read.content import read_content
from guidebuild.translate.messages.text import Age, plain
from tests.outputs.demo import CONTENT

GUIDE = "guides/larch-p2/replace-the-battery.md"


def page_in_german(root: Path) -> GuideView:
    content, _ = read_content(root)
    told = translation(root, content, "de", [GUIDE])
    (proof,) = told.proofs
    said = reading(proof, "de", told.content.tools, told.content.settings, told.stale)
    return guide_view(said, {})


@pytest.fixture
def root(tmp_path: Path) -> Path:
    return Path(shutil.copytree(CONTENT, tmp_path / "content"))


def test_fresh_names_are_not_spoken_of(root: Path) -> None:
    assert page_in_german(root).behind == ()


@pytest.mark.parametrize(
    ("file", "now", "then", "said"),
    [
        (
            "devices/larch-p2/device.yaml",
            ": Battery door\n",
            ": Battery lid\n",
            "Akkudeckel (Battery lid)",
        ),
        ("tools.yaml", "name: Pry card", "name: Pry sheet", "Hebelkarte (Pry sheet)"),
    ],
)
def test_a_name_behind_its_source_is_told_with_it(
    root: Path, file: str, now: str, then: str, said: str
) -> None:
    text = (root / file).read_text(encoding="utf-8")
    assert text.count(now) == 1
    (root / file).write_text(text.replace(now, then), encoding="utf-8")
    behind = page_in_german(root).behind
    assert plain(behind) == said
    assert behind[0].age is Age.BEHIND
    assert {piece.language for piece in behind} == {None, "en"}


def test_a_name_that_the_guide_does_not_use_is_not_spoken_of(root: Path) -> None:
    file = root / "devices/larch-p2/device.yaml"
    text = file.read_text(encoding="utf-8")
    assert text.count(": Feed motor,") == 1
    file.write_text(text.replace(": Feed motor,", ": Label motor,"), encoding="utf-8")
    assert page_in_german(root).behind == ()
