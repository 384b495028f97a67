"""A page opens from a folder and asks for nothing outside of it."""

import pytest

from tests.browser.chrome import Browser
from tests.browser.site import PAGES, THEMES, Site


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("page", PAGES)
def test_quiet_and_alone(browser: Browser, sites: dict[str, Site], theme: str, page: str) -> None:
    """No error, nothing blocked by the page's own policy, no address but the site's own files."""
    site = sites[theme]
    browser.screen(1440)
    browser.open(site.url(page))
    inside = site.folder.as_uri() + "/"
    outside = [url for url in browser.asked_for() if not url.startswith((inside, "data:"))]
    assert outside == []
    assert browser.complaints() == []


def test_the_guard_sees_a_request_and_a_block(browser: Browser, site: Site) -> None:
    """The canary: what is looked for is found when it is there."""
    browser.screen(1440)
    browser.open(site.url("START.html"))
    browser.asked_for()
    browser.value(
        "new Promise(done => { const one = new Image(); one.onerror = done; "
        "one.src = 'http://127.0.0.1:9/x.png'; document.body.append(one); }).then(() => true)"
    )
    assert any("img-src" in said for said in browser.complaints())
