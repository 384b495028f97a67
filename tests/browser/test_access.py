"""No barrier that a machine can find: axe-core with the rules of WCAG 2.2, A and AA, and good practice."""

import pytest

from tests.browser.checkers import AXE, needs_checker
from tests.browser.chrome import Browser
from tests.browser.site import KINDS, PAGES, THEMES, Site

pytestmark = needs_checker(AXE)
TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]


def _violations(browser: Browser) -> list[str]:
    browser.value(AXE.read_text(encoding="utf-8") + "; true")
    found: list[str] = browser.ask("axe", tags=TAGS)
    return found


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_no_violation(
    browser: Browser, sites: dict[str, Site], theme: str, page: str, scheme: str
) -> None:
    """Every page, light and dark."""
    browser.screen(1366, scheme=scheme)
    browser.open(sites[theme].url(page))
    assert _violations(browser) == []


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", KINDS)
def test_no_violation_on_a_telephone_from_right_to_left(
    browser: Browser, sites: dict[str, Site], theme: str, page: str
) -> None:
    """A page of each kind, narrow and turned round; targets of 24 px and more (2.5.8)."""
    browser.screen(390, 800)
    browser.open(sites[theme].url(page))
    browser.value("document.documentElement.dir = 'rtl'")
    assert _violations(browser) == []


def test_it_finds_a_barrier(browser: Browser, site: Site) -> None:
    """The canary: a picture without words is told."""
    browser.screen(1366)
    browser.open(site.url("START.html"))
    browser.value("document.querySelector('main').append(new Image()); true")
    assert any(said.startswith("image-alt") for said in _violations(browser))
