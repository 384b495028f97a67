"""On paper in other languages: true to size, nothing cut, cautions with their acts, and readable in pure black."""

import pytest

from tests import needs
from tests.browser.chrome import Browser
from tests.browser.paper import MM, PAPERS, Paper, printed
from tests.browser.site import KINDS, PSEUDO, THEMES, TRANSLATED, Site, in_language

EDGE = 8.0  # mm that no word may come nearer to the edge of the paper
START, GUIDE, TRAY = KINDS
SPOKEN = (*TRANSLATED, *PSEUDO, "ja")
pytestmark = needs.program("pdftotext")


@pytest.mark.parametrize("language", SPOKEN)
@pytest.mark.parametrize("page", KINDS)
def test_nothing_is_cut(browser: Browser, world: Site, page: str, language: str) -> None:
    """Every word inside the margins; nothing wider than the paper, which would shrink the whole print."""
    url = world.url(in_language(page, language))
    for name, size in PAPERS.items():
        if page != GUIDE or name == "A4":  # the longest is printed on Letter below
            paper = printed(browser, url, name)
            assert paper.beyond(EDGE, size) == []
            assert all(paper.sides)
        browser.open(url)
        browser.screen(int((size[0] - 20) * 96 / 25.4))
        browser.command("Emulation.setEmulatedMedia", media="print")
        found = browser.ask("wider") + browser.ask("cut")
        browser.command("Emulation.setEmulatedMedia", media="")
        assert found == []


@pytest.mark.parametrize("language", SPOKEN)
def test_the_rule_measures_50_mm(browser: Browser, world: Site, language: str) -> None:
    """On every sheet of the tray, A4 and Letter: 50.0 mm, ± 0.2."""
    for name in PAPERS:
        paper = printed(browser, world.url(in_language(TRAY, language)), name)
        found = [
            (side, (line["x1"] - line["x0"]) * MM)
            for side, line in paper.lines()
            if line["top"] == line["bottom"] and 45 < (line["x1"] - line["x0"]) * MM < 55
        ]
        sheets = browser.value("document.querySelectorAll('.traysheet').length")
        assert len({side for side, _ in found}) == len(found) == sheets
        assert [long for _, long in found] == [pytest.approx(50.0, abs=0.2)] * len(found)


@pytest.mark.parametrize(
    ("language", "paper"), [*((one, "A4") for one in SPOKEN), ("de", "Letter"), ("ar", "Letter")]
)
def test_a_caution_stands_by_its_first_act(
    browser: Browser, world: Site, language: str, paper: str
) -> None:
    browser.screen(1200)
    browser.open(world.url(in_language(GUIDE, language)))
    steps = browser.ask("marked")
    assert len(steps) > 5
    print_ = Paper(browser.printed(PAPERS[paper]))
    sides = print_.marks()
    assert [marks for marks in steps if len({sides[mark] for mark in marks}) > 1] == []
    assert print_.beyond(EDGE, PAPERS[paper]) == []


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", KINDS)
def test_readable_in_pure_black(
    browser: Browser, sites: dict[str, Site], theme: str, page: str
) -> None:
    """A printer without tones: each word is still darker or lighter than what it stands on."""
    assert printed(browser, sites[theme].url(page), "A4").illegible() == []


@pytest.mark.parametrize("language", ["de", "ar", "ja"])
def test_readable_in_pure_black_in_any_script(browser: Browser, world: Site, language: str) -> None:
    assert printed(browser, world.url(in_language(GUIDE, language)), "A4").illegible() == []


def test_it_finds_what_black_swallows(browser: Browser, site: Site) -> None:
    """The canary: dark grey on darker grey."""
    browser.screen(1200)
    browser.open(site.url(START))
    browser.value(
        "(() => { const h = document.querySelector('h1'); h.style.color = '#444';"
        " h.style.background = '#222';"
        " h.style.padding = '1em'; })()"
    )
    paper = Paper(browser.printed(PAPERS["A4"]))
    title = browser.value("document.querySelector('h1').innerText").split()
    assert {said.split(" on side")[0] for said in paper.illegible()} == set(title)
