"""No barrier that a machine can find: axe-core with the rules of WCAG 2.2, A and AA, and good practice."""

import pytest

from tests.browser.audits import barriers, barriers_of_colour
from tests.browser.checkers import AXE, needs_checker
from tests.browser.chrome import Browser
from tests.browser.site import KINDS, PAGES, PSEUDO, THEMES, TRANSLATED, Site, in_language

pytestmark = needs_checker(AXE)


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_no_violation(browser: Browser, sites: dict[str, Site], theme: str, page: str) -> None:
    """Every page in the light; in the dark by the rules of colour."""
    browser.screen(1366)
    browser.open(sites[theme].url(page))
    assert barriers(browser) == []
    browser.screen(1366, scheme="dark")
    assert barriers_of_colour(browser) == []


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", KINDS)
def test_no_violation_in_the_dark(
    browser: Browser, sites: dict[str, Site], theme: str, page: str
) -> None:
    """A page of each kind by all rules, on a telephone: targets of 24 px and more (2.5.8)."""
    browser.screen(390, 800, scheme="dark")
    browser.open(sites[theme].url(page))
    assert barriers(browser) == []


@pytest.mark.parametrize(
    ("page", "language"),
    [
        *((KINDS[1], one) for one in (*TRANSLATED, *PSEUDO, "ja")),
        (KINDS[0], "ar"),
        (KINDS[2], "ar"),
    ],
)
def test_no_violation_in_any_language(
    browser: Browser, world: Site, page: str, language: str
) -> None:
    """A guide in each; a page of each kind from right to left."""
    browser.screen(820, 1180)
    browser.open(world.url(in_language(page, language)))
    assert barriers(browser) == []


@pytest.mark.parametrize("page", KINDS)
def test_no_violation_in_plain_from_right_to_left(
    browser: Browser, sites: dict[str, Site], page: str
) -> None:
    browser.screen(390, 800)
    browser.open(sites["plain"].url(in_language(page, "ar")))
    assert barriers(browser) == []


def test_no_violation_in_bench_mode(browser: Browser, site: Site) -> None:
    """The two kinds of faces: cautions, and acts."""
    for face in (1, 2):
        browser.screen(1366, 650, scheme="dark" if face == 2 else "light")
        browser.open(f"{site.url(KINDS[1])}#open-the-battery-plug?bench={face}")
        assert browser.value("document.documentElement.className").split().count("bench") == 1
        assert barriers(browser) == []


def test_it_finds_a_barrier(browser: Browser, site: Site) -> None:
    """The canaries: a picture without words is told, and so is faint text in the dark."""
    browser.screen(1366, scheme="dark")
    browser.open(site.url("START.html"))
    browser.value("document.querySelector('main').append(new Image()); true")
    assert any(said.startswith("image-alt") for said in barriers(browser))
    browser.value("document.querySelector('h1').style.color = '#333'; true")
    assert any(said.startswith("color-contrast") for said in barriers_of_colour(browser))
