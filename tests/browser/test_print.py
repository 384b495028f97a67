"""On paper: true to size, nothing cut, and a caution on the page of its first act."""

import re
from itertools import accumulate

import pytest

from tests import needs
from tests.browser.chrome import Browser
from tests.browser.paper import MM, PAPERS, printed
from tests.browser.site import GUIDES, PAGES, THEMES, TRAYS, Site

EDGE = 8.0  # mm that no word may come nearer to the edge of the paper
pytestmark = needs.program("pdftotext")


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("page", TRAYS)
def test_the_rule_measures_50_mm(browser: Browser, site: Site, page: str, paper: str) -> None:
    """On every sheet of the tray's print: 50.0 mm, ± 0.2."""
    print_ = printed(browser, site.url(page), paper)
    found: dict[int, list[float]] = {}
    for number, line in print_.lines():
        long = (line["x1"] - line["x0"]) * MM
        if line["top"] == line["bottom"] and 45 < long < 55:
            found.setdefault(number, []).append(long)
    sheets = print_.text().count("50 mm")
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
    print_ = printed(browser, sites[theme].url(page), paper)
    assert print_.beyond(EDGE, PAPERS[paper]) == []
    assert all(print_.sides)
    whole = "".join(print_.sides)
    browser.command("Emulation.setEmulatedMedia", media="print")
    shown = browser.ask("shown_on_paper")
    browser.command("Emulation.setEmulatedMedia", media="")
    assert [words for words in shown if re.sub(r"\s", "", words) not in whole] == []


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", GUIDES)
def test_a_caution_stands_by_its_first_act(
    browser: Browser, sites: dict[str, Site], theme: str, page: str, paper: str
) -> None:
    """The title of a step, all its cautions and its first act are printed on one page."""
    sides = printed(browser, sites[theme].url(page), paper).sides
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
