"""Firefox under the rules of a reader: what automation would relax is refused, and the pages are quiet."""

import pytest

from tests.browser.firefox import Firefox
from tests.browser.site import KINDS, THEMES, Site, in_language

FETCH = "fetch('guidebuild-files.txt').then(() => 'read', () => 'refused')"


def test_a_page_cannot_read_its_neighbours(mozilla: Firefox, site: Site) -> None:
    """The canary: automation's own settings would let this through, and hide what fails for a reader."""
    mozilla.open(site.url("START.html"))
    assert mozilla.value(FETCH) == "refused"
    assert mozilla.complaints() != []


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("language", ["en", "de", "ar"])
def test_quiet_and_alone(
    mozilla: Firefox, sites: dict[str, Site], theme: str, language: str
) -> None:
    """No error and no address outside of the folder, on a page of each kind."""
    for page in KINDS:
        mozilla.open(sites[theme].url(in_language(page, language)))
        assert mozilla.complaints() == []
        assert [url for url in mozilla.asked_for() if not url.startswith(("file:", "data:"))] == []


def test_the_guard_sees_a_request(mozilla: Firefox) -> None:
    """The canary; it needs a port that browsers let through."""
    mozilla.open("about:blank")
    mozilla.value(
        "new Promise(done => { const one = new Image(); one.onerror = done;"
        " one.src = 'http://127.0.0.1:8123/x.png'; document.body.append(one); }).then(() => true)"
    )
    assert mozilla.asked_for() == ["http://127.0.0.1:8123/x.png"]
