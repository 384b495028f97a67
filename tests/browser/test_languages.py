"""Another language, the same place: what the reader had open, answered and was looking for stays."""

import pytest

from tests.browser.reader import BOARD, HEAD, LEFT, RIGHT, Reader
from tests.browser.site import Site
from tests.browser.window import Window

SEARCHES = {
    "en": ("WHITE lines", "replace-the-print-head"),
    "de": ("speicherkondensator ENTLADEN", "replace-the-control-board"),
    "ar": ("تفريغ مكثف", "replace-the-control-board"),
    "ja": ("ﾌﾟﾘﾝﾄﾍｯﾄﾞ", "replace-the-print-head"),  # half-width letters, for a title in full ones
}
HITS = "[...document.querySelectorAll('[data-find]:not([hidden]) a')].map(one => one.getAttribute('href'))"


@pytest.mark.parametrize("language", SEARCHES)
def test_search_in_every_script(window: Window, world: Site, language: str) -> None:
    words, guide = SEARCHES[language]
    reader = Reader(window, world, "START.html" if language == "en" else f"{language}/START.html")
    assert len(reader.run(HITS)) > 2
    reader.write("find", words)
    (hit,) = reader.run(HITS)
    assert guide in hit
    reader.press(f'a[href="{hit}"]')
    reader.until(f"location.pathname.endsWith('{guide}.html')")
    assert reader.run("document.documentElement.lang") == language


def test_a_step_of_a_japanese_guide_is_found(window: Window, world: Site) -> None:
    """Part of a word, since nothing stands between Japanese words; a sound mark makes another letter."""
    reader = Reader(window, world, "ja/START.html")
    reader.write("find", "ねじを外")
    assert len(reader.run(HITS)) == 1
    reader.write("find", "カバ")
    assert len(reader.run(HITS)) == 1
    reader.write("find", "カハ")
    assert reader.run(HITS) == []


@pytest.mark.parametrize("language", ["de", "ar", "ja"])
def test_the_switch_keeps_place_and_answers(window: Window, world: Site, language: str) -> None:
    reader = Reader(window, world, HEAD)
    reader.answer("revision", "b")
    reader.run("document.getElementById('remove-the-stiffening-bracket').scrollIntoView()")
    reader.until("location.hash.startsWith('#remove-the-stiffening-bracket')")
    reader.press(f'a.tongue[lang="{language}"]')
    reader.until(f"document.documentElement.lang === '{language}'")
    reader.until("document.readyState === 'complete'")
    assert reader.hash == "#remove-the-stiffening-bracket?revision=b"
    top = "document.getElementById('remove-the-stiffening-bracket').getBoundingClientRect().top"
    reader.until(f"Math.abs({top}) < 60")
    assert reader.run("document.querySelector('input[name=revision][value=b]').checked")


def test_the_switch_keeps_the_face_of_bench_mode(window: Window, world: Site) -> None:
    reader = Reader(window, world, BOARD, "remove-the-cover-screws?bench=2")
    reader.press('a.tongue[lang="ar"]')
    reader.until("document.documentElement.lang === 'ar'")
    reader.until("location.hash === '#remove-the-cover-screws?bench=2'")
    assert len(reader.seen(".act")) > 0 and reader.seen(".step h3") == []


def test_keys_turn_round_with_the_script(window: Window, world: Site) -> None:
    """The arrow that points on is the left one where all runs from the right."""
    reader = Reader(window, world, "ar/larch-p2/replace-the-print-head.html", "switch-off?bench=1")
    reader.key(LEFT)
    assert reader.hash != "#switch-off?bench=1"
    reader.key(RIGHT)
    assert reader.hash == "#switch-off?bench=1"
