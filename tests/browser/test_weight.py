"""A guide arrives whole and at once: its weight, and nothing that jumps while it loads."""

import re

import pytest

from tests.browser.chrome import Browser
from tests.browser.site import GUIDES, PAGES, Site

KB = 1000
_PHOTOGRAPH = re.compile(r'<figure class="shot">.*?</figure>', re.DOTALL)


@pytest.mark.parametrize("page", GUIDES)
def test_size(site: Site, page: str) -> None:
    """At most 400 kB with all drawings but without photographs, of which script and style at most 80 kB."""
    shared = [site.folder / "sheet" / name for name in ("sheet.css", "sheet.js")]
    assets = sum(file.stat().st_size for file in shared if file.is_file())
    assert assets <= 80 * KB
    words = _PHOTOGRAPH.sub("", (site.folder / page).read_text(encoding="utf-8"))
    assert assets + len(words.encode()) <= 400 * KB


@pytest.mark.parametrize("page", PAGES)
def test_nothing_jumps(browser: Browser, site: Site, page: str) -> None:
    """The browser's own measure of layout shifts (Layout Instability API) is 0 on every page."""
    browser.screen(1366, 650)
    browser.open(site.url(page))
    assert browser.ask("shifts") == 0
