"""Every page folds to the screen: 320 to 1920 px, zoomed in, with large letters, right to left."""

import pytest

from tests.browser.chrome import Browser
from tests.browser.site import KINDS, PAGES, THEMES, Site

WIDTHS = (320, 390, 820, 1366, 1440, 1920)


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_no_sideways_scroll(
    browser: Browser, sites: dict[str, Site], theme: str, page: str
) -> None:
    """Nothing sticks out of the screen, no word out of its block (WCAG 2.2, 1.4.10 reflow)."""
    browser.screen(1440)
    browser.open(sites[theme].url(page))
    found = {}
    for width in WIDTHS:
        browser.screen(width)
        found[width] = (browser.ask("wider") + browser.ask("cut"))[:6]
    assert found == {width: [] for width in WIDTHS}


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", KINDS)
def test_text_at_200_per_cent(
    browser: Browser, sites: dict[str, Site], theme: str, page: str
) -> None:
    """Zoomed to 200 % on an old laptop (WCAG 2.2, 1.4.4)."""
    browser.screen(1366, 650, zoom=2)
    browser.open(sites[theme].url(page))
    assert browser.ask("wider") + browser.ask("cut") == []


@pytest.mark.parametrize("page", KINDS)
@pytest.mark.parametrize("width", [320, 820, 1366])
def test_largest_letters(browser: Browser, site: Site, page: str, width: int) -> None:
    """The reader's own larger letters, on any screen."""
    browser.screen(width)
    browser.open(site.url(page))
    browser.value("document.querySelector('#size-3')?.click()")
    assert browser.ask("wider") + browser.ask("cut") == []


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", KINDS)
def test_spaced_text(browser: Browser, sites: dict[str, Site], theme: str, page: str) -> None:
    """Spacing of WCAG 2.2, 1.4.12: lines 1.5, letters 0.12 em, words 0.16 em, paragraphs 2 em."""
    browser.screen(820)
    browser.open(sites[theme].url(page))
    browser.ask("spaced")
    assert browser.ask("wider") + browser.ask("cut") == []


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", KINDS)
def test_right_to_left(browser: Browser, sites: dict[str, Site], theme: str, page: str) -> None:
    """The same pages turned round, as Arabic has them."""
    browser.screen(1440)
    browser.open(sites[theme].url(page))
    browser.value("document.documentElement.dir = 'rtl'")
    found = {}
    for width in WIDTHS:
        browser.screen(width)
        found[width] = (browser.ask("wider") + browser.ask("cut"))[:6]
    assert found == {width: [] for width in WIDTHS}
