"""Every word is legible: 7 : 1 or more against what it stands on, as it is computed on the page."""

import pytest

from tests.browser.audits import faint
from tests.browser.chrome import Browser
from tests.browser.site import KINDS, PAGES, PSEUDO, THEMES, TRANSLATED, Site, in_language

SCHEMES = ("light", "dark")


def _faint(browser: Browser, url: str) -> dict[str, list[str]]:
    browser.screen(1440)
    browser.open(url)
    found = {}
    for scheme in SCHEMES:
        browser.screen(1440, scheme=scheme)
        found[scheme] = faint(browser)
    return found


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_contrast(browser: Browser, sites: dict[str, Site], theme: str, page: str) -> None:
    """Every page, light and dark."""
    assert _faint(browser, sites[theme].url(page)) == {scheme: [] for scheme in SCHEMES}


@pytest.mark.parametrize("language", [*TRANSLATED, *PSEUDO, "ja"])
def test_contrast_in_any_language(browser: Browser, world: Site, language: str) -> None:
    """What is not translated stands out by its frame, never by fainter letters."""
    for page in KINDS:
        url = world.url(in_language(page, language))
        assert _faint(browser, url) == {scheme: [] for scheme in SCHEMES}


def test_contrast_in_bench_mode(browser: Browser, site: Site) -> None:
    for face in (1, 2):
        url = f"{site.url(KINDS[1])}#open-the-battery-plug?bench={face}"
        assert _faint(browser, url) == {scheme: [] for scheme in SCHEMES}


def test_the_measure_knows_a_worked_value(browser: Browser, site: Site) -> None:
    """#767676 on white is 4.54 : 1, a value worked in many a text on contrast (from memory)."""
    browser.screen(1440)
    browser.open("about:blank")
    browser.value("document.body.innerHTML = '<p style=\"color:#767676;background:#fff\">grey</p>'")
    assert browser.ask("contrast", least=4.5) == []
    assert browser.ask("contrast", least=4.6) == ['4.54 <p class=""> grey']
