"""Every word is legible: 7 : 1 or more against what it stands on, as it is computed on the page."""

import pytest

from tests.browser.chrome import Browser
from tests.browser.site import PAGES, THEMES, Site


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_contrast(
    browser: Browser, sites: dict[str, Site], theme: str, page: str, scheme: str
) -> None:
    """7 : 1 by the formula of WCAG 2.2 (1.4.6), for every text node, in drawings too."""
    browser.screen(1440, scheme=scheme)
    browser.open(sites[theme].url(page))
    assert browser.ask("contrast", least=7) == []


def test_the_measure_knows_a_worked_value(browser: Browser, site: Site) -> None:
    """#767676 on white is 4.54 : 1, a value worked in many a text on contrast (from memory)."""
    browser.screen(1440)
    browser.open("about:blank")
    browser.value("document.body.innerHTML = '<p style=\"color:#767676;background:#fff\">grey</p>'")
    assert browser.ask("contrast", least=4.5) == []
    assert browser.ask("contrast", least=4.6) == ['4.54 <p class=""> grey']
