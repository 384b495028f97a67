"""A job record comes back from anybody's stick: what stands in it stays words, and odd shapes don't stop the page."""

from pathlib import Path

import pytest

from tests.browser.chrome import Browser
from tests.browser.hostile.corpus import PAYLOADS
from tests.browser.hostile.jobs import loaded
from tests.browser.hostile.looking import seen, watching
from tests.browser.site import GUIDES, Site

_KEY = "document.querySelector('[data-guide]').dataset.guide"
_ODD = (
    '"x"', "1", "null", "[]", "{}", '{"record": 1}', '{"record": 1, "guide": {"a": 1}}',
    '{"record": 1, "guide": "GUIDE", "entries": null, "answers": 7}',
    '{"record": 1, "guide": "GUIDE", "entries": [1, 2], "answers": [null]}',
    '{"record": 1, "guide": "GUIDE", "entries": {"record.serial": null}, "answers": {"revision": {}}}',
    '{"record": 1, "guide": "GUIDE", "entries": {"record.serial": [{"a": []}, "x"]}, "since": []}',
    '{"record": 1, "guide": "GUIDE", "entries": {"__proto__": ["x", 1e400]}}',
    "[" * 100_000, '{"record": 1, "guide": "GUIDE", "entries": {"a": ["' + "x" * 5_000_000 + '", 1]}}',
)  # fmt: skip


def test_words_in_a_job_record_stay_words(browser: Browser, site: Site) -> None:
    page = site.folder / GUIDES[-1]
    with watching(browser):
        seen(browser, page, site.folder)
        number = browser.value(_KEY).split("/")[0]
        taken = browser.ask("load_jobs", payloads=PAYLOADS, guide=number)
        told = browser.ask("sinks")
    assert taken == len(PAYLOADS)
    assert told["found"] == []
    assert set(told["ran"]) <= {"print()"}
    assert told["words"] > 0


@pytest.mark.parametrize("odd", range(len(_ODD)))
def test_a_record_of_an_odd_shape_does_not_stop_the_page(
    browser: Browser, site: Site, odd: int
) -> None:
    page = site.folder / GUIDES[-1]
    with watching(browser):
        seen(browser, page, site.folder)
        said = browser.ask("load_job", text=_ODD[odd].replace("GUIDE", browser.value(_KEY)))
    assert said[0] == ""
    assert said[1]
    assert browser.complaints() == []


def test_no_file_of_the_site_is_named_by_what_a_person_wrote_but_the_guides(site: Site) -> None:
    """File names come from content paths, which the reader and the check of names hold to a-z 0-9 . _ -."""
    names = {path.relative_to(site.folder).as_posix() for path in Path(site.folder).rglob("*")}
    assert all(set(name) <= set("abcdefghijklmnopqrstuvwxyz0123456789._-/STARF") for name in names)


def test_damaged_records_do_not_stop_the_page(browser: Browser, site: Site) -> None:
    """A sample; `python -m tests.browser.hostile.jobs` loads as many as are asked for."""
    answered, wrong = loaded(browser, site.folder / GUIDES[-1], site.folder, 100)
    assert wrong == []
    assert answered == 100
