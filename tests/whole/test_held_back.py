"""A released guide with an error does not go out as released: all its pages and the start page say so."""

import shutil
from pathlib import Path

import pytest

from guidebuild.build.make import make
from tests.outputs.demo import CONTENT

GUIDE = "guides/larch-p2/replace-the-print-head.md"
PAGE = "larch-p2/replace-the-print-head.html"
SAYS = {"en": "It is not for work", "de": "nicht zur Arbeit freigegeben"}


@pytest.fixture
def content(tmp_path: Path) -> Path:
    """The demo, whose bracket screws stay out: an error in a released guide."""
    root = Path(shutil.copytree(CONTENT, tmp_path / "content"))
    said = (root / GUIDE).read_text(encoding="utf-8")
    assert said.count("do-up: bracket-screws\n") == 1
    (root / GUIDE).write_text(said.replace("do-up: bracket-screws\n", ""), encoding="utf-8")
    return root


def test_its_pages_say_that_it_is_not_for_work(content: Path, tmp_path: Path) -> None:
    made = make(content, tmp_path / "site", cache=False)
    assert made.held_back == ("LP2-03/2",)
    for language, says in SAYS.items():
        page = (tmp_path / "site" / language / PAGE).read_text(encoding="utf-8")
        assert 'class="refused"' in page and says in page
        assert "released</dd>" not in page
    start = (tmp_path / "site/START.html").read_text(encoding="utf-8")
    assert start.count("not for work") == 1 and start.count(">released<") == 2


def test_mended_it_goes_out_again(content: Path, tmp_path: Path) -> None:
    """With the cache: only this guide's pages are made again."""
    make(content, tmp_path / "site")
    shutil.copyfile(CONTENT / GUIDE, content / GUIDE)
    made = make(content, tmp_path / "site")
    assert made.held_back == ()
    for path in (f"en/{PAGE}", "START.html"):
        assert "not for work" not in (tmp_path / "site" / path).read_text(encoding="utf-8")


def test_a_draft_may_have_errors(content: Path, tmp_path: Path) -> None:
    """It says that it is a draft; that is enough."""
    said = (content / GUIDE).read_text(encoding="utf-8")
    (content / GUIDE).write_text(
        said.replace("status: released", "status: draft"), encoding="utf-8"
    )
    made = make(content, tmp_path / "site", cache=False)
    assert made.held_back == () and made.site.result.findings
    assert 'class="refused"' not in (tmp_path / "site/en" / PAGE).read_text(encoding="utf-8")
