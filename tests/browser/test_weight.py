"""A guide arrives whole and at once: its weight, and nothing that jumps while it loads."""

import pytest

from tests.browser.chrome import Browser
from tests.browser.site import GUIDES, PAGES, Site

KB = 1000
STEPS_OF_THE_LONGEST = 40


@pytest.mark.parametrize("page", GUIDES)
def test_size(site: Site, page: str) -> None:
    """At most 400 kB with all drawings, of which script and style at most 80 kB."""
    shared = [site.folder / "sheet" / name for name in ("sheet.css", "sheet.js")]
    assets = sum(file.stat().st_size for file in shared if file.is_file())
    assert assets <= 80 * KB
    assert assets + (site.folder / page).stat().st_size <= 400 * KB


@pytest.mark.parametrize("page", PAGES)
def test_nothing_jumps(browser: Browser, site: Site, page: str) -> None:
    """The browser's own measure of layout shifts (Layout Instability API) is 0 on every page."""
    browser.screen(1366, 650)
    browser.open(site.url(page))
    assert browser.ask("shifts") == 0
