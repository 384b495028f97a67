"""The demo in other languages, read in a browser: German, Arabic, and the two that nobody speaks."""

import re

import pytest

from tests.browser.chrome import Browser
from tests.browser.reader import Reader
from tests.browser.site import GUIDES, PSEUDO, TRANSLATED, Site, in_language

HEAD = "larch-p2/replace-the-print-head.html"
BOARD = "brindle-e4/replace-the-control-board.html"
TRAY = "larch-p2/replace-the-print-head-tray.html"
DRAWINGS = (
    "[...document.querySelectorAll('main svg, main img, main video')].map(one => one.localName)"
)


@pytest.mark.parametrize("language", ["ar", "ar-XB"])
def test_quantities_keep_their_order(browser: Browser, world: Site, language: str) -> None:
    """`30 %` and `0.35 N·m` run from the left where all else runs from the right (Unicode UAX #9, isolates)."""
    browser.screen(1366)
    browser.open(world.url(f"{language.lower()}/{HEAD}"))
    assert browser.value("document.documentElement.dir") == "rtl"
    shown = browser.value("[...document.querySelectorAll('bdi.q')].map(one => one.textContent)")
    assert {"30\u00a0%", "65\u00a0min", "0.35\u00a0N·m"} <= set(shown)
    assert browser.ask("quantities") == []


@pytest.mark.parametrize("language", [*TRANSLATED, *PSEUDO, "ja"])
@pytest.mark.parametrize("page", GUIDES)
def test_every_figure_is_there(browser: Browser, world: Site, page: str, language: str) -> None:
    """The same drawings, photographs and films in the same order; every one with something in it."""
    told = []
    for one in ("en", language):
        browser.open(world.url(in_language(page, one)))
        told.append(browser.value(DRAWINGS))
    assert told[0] == told[1] and len(told[0]) > 20
    empty = "[...document.querySelectorAll('main img')].filter(one => one.complete && !one.naturalWidth).length"
    assert browser.value(empty) == 0


@pytest.mark.parametrize("language", [*TRANSLATED, *PSEUDO])
def test_every_heading_is_found_by_search(browser: Browser, world: Site, language: str) -> None:
    """Steps' titles of every guide, typed as they stand on the page."""
    for page in GUIDES:
        here = in_language(page, language)
        headings = Reader(browser, world, here).seen(".step h3")
        titles = {re.split(r":\s+", one, maxsplit=1)[-1].split("\n")[-1] for one in headings}
        assert len(titles) > 5
        reader = Reader(browser, world, f"{language.lower()}/START.html")
        for title in titles:
            reader.write("find", title)
            hits = reader.run(
                "[...document.querySelectorAll('[data-find]:not([hidden]) a')].map(one => one.href)"
            )
            assert any(hit.endswith(here) for hit in hits), title


def test_arabic_is_found_without_its_vowel_signs(browser: Browser, world: Site) -> None:
    reader = Reader(browser, world, "ar/START.html")
    shown = "[...document.querySelectorAll('[data-find]:not([hidden]) a')].map(one => one.getAttribute('href'))"
    reader.write("find", "مورّض".replace("و", "ؤ"))
    with_sign = reader.run(shown)
    reader.write("find", "مورض")
    assert with_sign == reader.run(shown)


@pytest.mark.parametrize("page", [HEAD, BOARD, TRAY, "START.html"])
def test_a_german_page_has_no_decimal_point(browser: Browser, world: Site, page: str) -> None:
    """Sheet, drawings and scales (CLDR: a comma); dates and addresses have other signs.

    What is printed on the device's own label is drawn as it stands there.
    """
    browser.open(world.url(f"de/{page}"))
    browser.value("document.querySelectorAll('.look-at').forEach(one => one.remove())")
    said = " ".join(
        browser.value(
            "(() => { const found = [], all = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);"
            " while (all.nextNode()) found.push(all.currentNode.data); return found; })()"
        )
    )
    assert re.findall(r"\d\.\d+", said) == []
    assert page == "START.html" or re.search(r"\d,\d", said)


@pytest.mark.parametrize(("language", "comma"), [("ar", "،"), ("ja", "、")])
def test_lists_have_the_comma_of_their_script(
    browser: Browser, world: Site, language: str, comma: str
) -> None:
    reader = Reader(browser, world, f"{language}/{HEAD}")
    told = reader.seen("td.undo") + reader.seen(".spine, .step .with, .tally dd")
    own = [one for one in told if not re.search("[a-z]{3}", one)]
    assert any(comma in one for one in own)
    assert [one for one in own if ", " in one] == []


def test_a_language_without_messages_says_so(browser: Browser, world: Site) -> None:
    reader = Reader(browser, world, f"sv/{HEAD}")
    assert reader.run("document.documentElement.lang") == "sv"
    assert "sv, labels in English" in reader.seen(".cells dd")
    assert "step 2" in " ".join(reader.seen("td.nw"))


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("de", "Schrauben draußen: 2, in den Fächern"),
        ("fr", "Vis retirées\u00a0: 2, dans les cases"),
        ("es", "Tornillos fuera: 2, en las casillas"),
        ("ja", "外したねじ：2本（ポケット別）"),
        ("ar", "البراغي المفكوكة: 2، في الجيوب"),
        ("sv", "Screws out: 2, in pockets"),
    ],
)
def test_the_tally_speaks_the_language(
    browser: Browser, world: Site, language: str, line: str
) -> None:
    reader = Reader(browser, world, f"{language}/{HEAD}")
    assert line in reader.seen("#remove-the-upper-cover-screws .tally dt")
