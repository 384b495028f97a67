"""Films, from the disk: they play their piece, captions show in the reader's language, times lead to places; on paper
and without scripts the still and the words stand."""

import time
from collections.abc import Callable

import pytest

from tests.browser.chrome import Browser
from tests.browser.site import THEMES, Site
from tests.browser.window import Window

GUIDE = "larch-p2/replace-the-print-head.html"
FILM = "document.querySelector('#connect-the-head video')"
_LONG = 10.0  # seconds until a film is given up; a machine that is busy starts it late


def waited(window: Window, expression: str, holds: Callable[[object], bool]) -> object:
    """The value of an expression as soon as it holds, or as it is in the end."""
    end = time.monotonic() + _LONG
    while not holds(value := window.value(expression)) and time.monotonic() < end:
        time.sleep(0.1)
    return value


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("language", ["en", "de", "ar"])
def test_a_film_is_there_with_captions_in_the_reader_s_language(
    window: Window, sites: dict[str, Site], theme: str, language: str
) -> None:
    window.screen(1366, 650)
    window.open(sites[theme].url(f"{language}/{GUIDE}"))
    assert waited(window, f"{FILM}.readyState", lambda state: bool(state)), "no film"
    assert window.value(f"[{FILM}.videoWidth, {FILM}.error]") == [640, None]
    tracks = f"[...{FILM}.textTracks]"
    shown = f"{tracks}.filter(t => t.mode === 'showing').map(t => [t.kind, t.language])"
    assert waited(window, shown, bool) == [["captions", language]]
    cues = f"{tracks}[0].cues?.length"
    assert waited(window, cues, bool) == 4
    said = window.value(f"{tracks}.filter(t => t.kind !== 'chapters').map(t => t.language)")
    assert said[0] == language and sorted(said) == ["ar", "de", "en"]
    assert window.complaints() == []


def test_a_time_leads_to_its_place_and_the_line_is_marked(window: Window, site: Site) -> None:
    window.screen(1366, 650)
    window.open(site.url(f"en/{GUIDE}"))
    assert waited(window, f"{FILM}.readyState", lambda state: bool(state))
    assert window.value(f"Math.round({FILM}.currentTime)") == 7  # where the piece begins
    window.value(f"{FILM}.muted = true")
    window.value("document.querySelectorAll('#connect-the-head .moments .at')[1].click()")
    assert waited(window, f"{FILM}.currentTime", lambda at: float(str(at)) >= 9.7)
    said = "document.querySelector('#connect-the-head .moments .now')?.innerText ?? ''"
    assert "Turn the flap down" in str(waited(window, said, bool))
    window.value(f"{FILM}.pause()")


def test_no_film_runs_on_out_of_sight_in_bench_mode(window: Window, site: Site) -> None:
    window.screen(1366, 650)
    window.open(site.url(f"en/{GUIDE}") + "#connect-the-head?bench=2")
    window.value(f"({FILM}.muted = true, {FILM}.play(), 0)")
    assert waited(window, f"!{FILM}.paused", bool)
    for _ in range(2):
        window.key("\ue00f")  # Page Down
    assert waited(window, f"{FILM}.paused", bool)


@pytest.mark.parametrize("theme", THEMES)
def test_without_scripts_times_open_the_film_itself(
    browser: Browser, sites: dict[str, Site], theme: str
) -> None:
    browser.screen(1366, 650)
    browser.open(sites[theme].url(f"en/{GUIDE}"), scripts=False)
    links = browser.value(
        "[...document.querySelectorAll('#connect-the-head a.at')].map(a => a.href.split('/').pop())"
    )
    film = "free-the-head-flex.mp4#t="
    assert links == [f"{film}7", f"{film}9.7", f"{film}0"]


def test_on_paper_the_still_and_the_words_stand(browser: Browser, site: Site) -> None:
    browser.screen(1366, 650)
    browser.open(site.url(f"en/{GUIDE}"))
    browser.command("Emulation.setEmulatedMedia", media="print")
    try:
        shown = "[...document.querySelectorAll('#connect-the-head .film > *, #connect-the-head .film figure > *')]"
        tags = f"{shown}.filter(e => e.checkVisibility()).map(e => e.localName)"
        assert browser.value(tags) == ["figure", "img", "figcaption", "ul"]
    finally:
        browser.command("Emulation.setEmulatedMedia", media="")
