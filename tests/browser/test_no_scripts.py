"""Without scripts the whole guide is there: nothing hidden, nothing that only a script can do."""

import pytest

from tests.browser.chrome import Browser
from tests.browser.site import PAGES, Site


@pytest.mark.parametrize("page", PAGES)
def test_all_content_is_there(browser: Browser, site: Site, page: str) -> None:
    """What the page says with scripts, it says without them, but for the script's own controls."""
    browser.screen(1440)
    browser.open(site.url(page), scripts=False)
    assert browser.ask("hidden") == []
    assert browser.complaints() == []
