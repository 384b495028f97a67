"""Every page folds to the screen: 320 to 1920 px, zoomed in, with large letters, in every script."""

import pytest

from tests.browser.audits import unfolded
from tests.browser.chrome import Browser
from tests.browser.site import KINDS, PAGES, PSEUDO, THEMES, TRANSLATED, Site, in_language


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_no_sideways_scroll(
    browser: Browser, sites: dict[str, Site], theme: str, page: str
) -> None:
    """Nothing sticks out of the screen, no word out of its block; the same turned round."""
    browser.screen(1440)
    browser.open(sites[theme].url(page))
    assert unfolded(browser) == {}
    if page in KINDS:
        browser.value("document.documentElement.dir = 'rtl'")
        assert unfolded(browser) == {}


@pytest.mark.parametrize("language", [*TRANSLATED, *PSEUDO, "ja"])
@pytest.mark.parametrize("page", KINDS)
def test_no_sideways_scroll_in_any_language(
    browser: Browser, world: Site, page: str, language: str
) -> None:
    """A page of each kind, and zoomed to 200 % on an old laptop (WCAG 2.2, 1.4.4)."""
    browser.screen(1440)
    browser.open(world.url(in_language(page, language)))
    assert unfolded(browser) == {}
    browser.screen(1366, 650, zoom=2)
    assert browser.ask("wider") + browser.ask("cut") == []


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_text_at_200_per_cent(
    browser: Browser, sites: dict[str, Site], theme: str, page: str
) -> None:
    """Zoomed to 200 % on an old laptop (WCAG 2.2, 1.4.4)."""
    browser.screen(1366, 650, zoom=2)
    browser.open(sites[theme].url(page))
    assert browser.ask("wider") + browser.ask("cut") == []


@pytest.mark.parametrize("page", KINDS)
@pytest.mark.parametrize("language", ["en", "de", "ar"])
def test_largest_letters(browser: Browser, world: Site, page: str, language: str) -> None:
    """The reader's own larger letters, on any screen."""
    browser.screen(1366)
    browser.open(world.url(in_language(page, language)))
    browser.value("document.querySelector('#size-3')?.click()")
    assert unfolded(browser, (320, 820, 1366)) == {}


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", KINDS)
def test_spaced_text(browser: Browser, sites: dict[str, Site], theme: str, page: str) -> None:
    """Spacing of WCAG 2.2, 1.4.12: lines 1.5, letters 0.12 em, words 0.16 em, paragraphs 2 em."""
    browser.screen(820)
    browser.open(sites[theme].url(page))
    browser.ask("spaced")
    assert browser.ask("wider") + browser.ask("cut") == []


def test_it_finds_what_sticks_out(browser: Browser, site: Site) -> None:
    """The canary: a word of 400 px on a narrow screen."""
    browser.screen(320)
    browser.open(site.url("START.html"))
    browser.value("document.querySelector('h2').style.inlineSize = '400px'")
    assert list(unfolded(browser, (320, 820))) == [320]
