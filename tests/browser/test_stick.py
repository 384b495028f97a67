"""The pages that only a stick has: what is on it, and each guide as one file, moved to another place."""

import shutil
from pathlib import Path

import pytest

from tests.browser.audits import barriers, faint, unfolded
from tests.browser.checkers import AXE, VNU, errors_in, needs_checker
from tests.browser.chrome import Browser
from tests.browser.reader import Reader
from tests.browser.site import Site

LISTED = "this-stick.html"
ALONE = "single/{language}-larch-p2-replace-the-print-head.html"
PAGES = (LISTED, ALONE.format(language="en"), ALONE.format(language="ar"))


@pytest.mark.parametrize("page", PAGES)
def test_quiet_legible_and_folded(browser: Browser, stick: Site, page: str) -> None:
    browser.screen(1440)
    browser.open(stick.url(page))
    inside = (stick.folder.as_uri() + "/", "data:")
    assert [url for url in browser.asked_for() if not url.startswith(inside)] == []
    assert browser.complaints() == []
    assert unfolded(browser) == {}
    for scheme in ("light", "dark"):
        browser.screen(1440, scheme=scheme)
        assert faint(browser) == []


@needs_checker(AXE)
@pytest.mark.parametrize("page", PAGES)
def test_no_violation(browser: Browser, stick: Site, page: str) -> None:
    browser.screen(1366)
    browser.open(stick.url(page))
    assert barriers(browser) == []


@needs_checker(VNU, "java")
def test_valid(stick: Site) -> None:
    """The list of the stick, and one guide as one file (the others are made alike)."""
    files = [stick.folder / page for page in PAGES[:2]]
    assert errors_in(*files) == []


def test_a_guide_as_one_file_needs_nothing_beside_it(
    browser: Browser, stick: Site, tmp_path: Path
) -> None:
    """Copied alone to another folder: drawings, photographs, letters, ticks and answers are there."""
    shutil.copy(stick.folder / PAGES[1], tmp_path / "alone.html")
    reader = Reader(browser, Site(tmp_path), "alone.html")
    reader.after(300)
    broken = "[...document.images].filter(one => one.complete && !one.naturalWidth).length"
    assert reader.run(broken) == 0 and reader.run("document.images.length") >= 2
    assert reader.run("document.fonts.check('1em Atkinson Hyperlegible')")
    reader.answer("revision", "a")
    assert "revision=a" in reader.hash
    reader.tick("2.1")
    reader.after(400)
    reader.reload()
    assert reader.run("document.getElementById('2.1').checked")
    assert browser.complaints() == []
    assert [
        url for url in browser.asked_for() if not url.startswith((tmp_path.as_uri(), "data:"))
    ] == []
