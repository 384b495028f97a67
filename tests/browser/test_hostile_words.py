"""No word of an author or a translator becomes script, style, address or handler, in any place.

Every place of the demo in turn; `python -m tests.browser.hostile` puts each payload into each place.
"""

from pathlib import Path

import pytest

from tests.browser.chrome import Browser
from tests.browser.hostile.corpus import PAYLOADS
from tests.browser.hostile.looking import seen, watching
from tests.browser.hostile.planted import built, slots


def test_there_are_enough_and_each_is_another() -> None:
    assert len(set(PAYLOADS)) == len(PAYLOADS) >= 200
    assert slots() > len(PAYLOADS)  # so that one turn takes each payload


@pytest.mark.parametrize(
    ("source", "turn"), [(True, 0), (False, 97)], ids=["source", "translation"]
)
def test_words_stay_words(browser: Browser, tmp_path: Path, source: bool, turn: int) -> None:
    site = built(tmp_path, turn, source)
    pages = sorted(set(site.rglob("*.html")) - {site / "rules.html"})  # no author's words are there
    guides = len(list(site.glob("en/*/*-tray.html")))
    assert guides
    a_language = 1 + 2 * guides  # its start page; a page and a tray sheet for each guide
    assert len(pages) == (a_language if source else 2 * a_language)
    with watching(browser):
        for page in pages:
            told = seen(browser, page, site)
            assert told.troubles == ()
            if source or "/de/" in page.as_posix():
                assert told.words, page  # the payloads did arrive, as words


def test_the_watch_sees_what_runs(browser: Browser, tmp_path: Path) -> None:
    """The canary: the same words, not escaped, run; with the policy on, they do not."""
    policy = "<meta http-equiv='Content-Security-Policy' content=\"default-src 'none'\">"
    ran = 0
    for bypass in (True, False):
        with watching(browser, bypass):
            for number in range(0, 120, 6):
                page = tmp_path / f"{number}.html"
                page.write_text(f"<!DOCTYPE html>{policy}<body>{PAYLOADS[number]}", "utf-8")
                told = seen(browser, page, tmp_path)
                ran += bool(told.ran)
                assert bypass or not told.ran
    assert ran >= 10
