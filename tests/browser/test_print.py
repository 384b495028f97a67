"""On paper: true to size, nothing cut, and a caution on the page of its first act."""

import io
import re
import subprocess
from collections.abc import Iterator
from itertools import accumulate
from typing import Any

import pytest

from tests import needs
from tests.browser.chrome import A4, LETTER, Browser
from tests.browser.site import GUIDES, PAGES, THEMES, TRAYS, Site

PAPERS = {"A4": A4, "Letter": LETTER}
MM = 25.4 / 72  # of a point
EDGE = 8.0  # mm that no word may come nearer to the edge of the paper
pytestmark = needs.program("pdftotext")


_PRINTED: dict[tuple[str, str], bytes] = {}  # a page is printed once a process: it takes seconds


def _pdf(browser: Browser, site: Site, page: str, paper: str) -> bytes:
    """The print; the page is open afterwards."""
    browser.screen(1200)
    browser.open(site.url(page))
    key = site.url(page), paper
    if key not in _PRINTED:
        _PRINTED[key] = browser.printed(PAPERS[paper])
    return _PRINTED[key]


def _words(pdf: bytes, *how: str) -> str:
    command = ["pdftotext", *how, "-", "-"]
    told = subprocess.run(command, input=pdf, capture_output=True, check=True)
    return told.stdout.decode("utf-8")


def _lines(pdf: bytes) -> Iterator[tuple[Any, Any]]:
    """Every straight line of the print with its page."""
    pdfplumber = needs.library("pdfplumber")
    with pdfplumber.open(io.BytesIO(pdf)) as document:
        for page in document.pages:
            for line in page.lines:
                yield page.page_number, line


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("page", TRAYS)
def test_the_rule_measures_50_mm(browser: Browser, site: Site, page: str, paper: str) -> None:
    """On every sheet of the tray's print: 50.0 mm, ± 0.2."""
    pdf = _pdf(browser, site, page, paper)
    found: dict[int, list[float]] = {}
    for number, line in _lines(pdf):
        long = (line["x1"] - line["x0"]) * MM
        if line["top"] == line["bottom"] and 45 < long < 55:
            found.setdefault(number, []).append(long)
    sheets = _words(pdf).count("50 mm")
    assert sheets and len(found) == sheets
    for rules in found.values():
        assert rules == [pytest.approx(50.0, abs=0.2)]


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_nothing_is_cut(
    browser: Browser, sites: dict[str, Site], theme: str, page: str, paper: str
) -> None:
    """Every word that the page shows is printed, and inside the paper's margins; no page is empty."""
    pdf = _pdf(browser, sites[theme], page, paper)
    boxes = _words(pdf, "-bbox")
    wide, high = PAPERS[paper]
    for left, top, right, bottom in re.findall(
        r'<word xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax="(.*?)"', boxes
    ):
        assert float(left) * MM > EDGE and float(right) * MM < wide - EDGE
        assert float(top) * MM > EDGE and float(bottom) * MM < high - EDGE / 2
    sides = _words(pdf, "-raw").split("\f")[:-1]
    assert all(re.sub(r"\d+ / \d+", "", side).strip() for side in sides)
    printed = "".join(re.sub(r"\s", "", side) for side in sides)
    browser.command("Emulation.setEmulatedMedia", media="print")
    shown = browser.ask("shown_on_paper")
    browser.command("Emulation.setEmulatedMedia", media="")
    assert [words for words in shown if re.sub(r"\s", "", words) not in printed] == []


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", GUIDES)
def test_a_caution_stands_by_its_first_act(
    browser: Browser, sites: dict[str, Site], theme: str, page: str, paper: str
) -> None:
    """The title of a step, all its cautions and its first act are printed on one page."""
    pdf = _pdf(browser, sites[theme], page, paper)
    sides = [re.sub(r"\s", "", side) for side in _words(pdf, "-raw").split("\f")[:-1]]
    whole, ends = "".join(sides), list(accumulate(map(len, sides)))
    steps: list[list[str]] = browser.ask("cautions")
    assert steps
    place = whole.index(
        re.sub(r"\s", "", browser.value("document.querySelector('.legend').innerText"))[:20]
    )
    parted = []
    for title, *words in steps:
        pages = set()
        for said in (title, *words):
            place = whole.index(re.sub(r"\s", "", said), place)
            pages.add(sum(end <= place for end in ends))
        if words and len(pages) > 1:
            parted.append(title)
    assert parted == []


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_nothing_is_wider_than_the_paper(
    browser: Browser, sites: dict[str, Site], theme: str, page: str
) -> None:
    """One thing too wide would shrink every page of the print, and with it what is drawn true to size."""
    browser.open(sites[theme].url(page))
    found = {}
    for paper, (wide, _) in PAPERS.items():
        browser.screen(int((wide - 20) * 96 / 25.4))
        browser.command("Emulation.setEmulatedMedia", media="print")
        found[paper] = browser.ask("wider") + browser.ask("cut")
        browser.command("Emulation.setEmulatedMedia", media="")
    assert found == {paper: [] for paper in PAPERS}
