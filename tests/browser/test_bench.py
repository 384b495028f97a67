"""Bench mode: one face at a time, by keys and by the two bars at the foot, over the whole guide."""

from tests.browser.reader import BOARD, DOWN, ESCAPE, HEAD, LEFT, RIGHT, UP, Reader
from tests.browser.site import Site
from tests.browser.window import Window


def test_the_first_face_holds_the_cautions_the_next_the_acts(window: Window, site: Site) -> None:
    reader = Reader(window, site, hash="open-the-battery-plug?bench=1")
    assert reader.seen(".step h3") == [] and reader.seen("#bench-no") == ["3"]
    assert any("WARNING" in words for words in reader.seen(".panel"))
    assert reader.seen(".act") == []
    reader.key(DOWN)
    assert any("Unplug P1" in words for words in reader.seen(".act"))
    assert any("Use only plastic tools" in words for words in reader.seen(".panel"))
    assert reader.hash == "#open-the-battery-plug?bench=2"


def test_keys_go_on_and_back(window: Window, site: Site) -> None:
    reader = Reader(window, site, hash="switch-off?bench=1")
    for key in (DOWN, RIGHT, " "):
        reader.key(key)
    there = reader.hash
    assert there != "#switch-off?bench=1"
    for key in (UP, LEFT, UP):
        reader.key(key)
    assert reader.hash == "#switch-off?bench=1"
    reader.key(ESCAPE)
    assert reader.seen(".step h3") and "bench" not in reader.hash


def test_the_bars_lead_through_every_step_to_the_final_checks(window: Window, site: Site) -> None:
    for page in (HEAD, BOARD):
        reader = Reader(window, site, page)
        main = reader.run("Array.from(document.querySelectorAll('main > .step'), one => one.id)")
        reader.press(".to-bench")
        met = []
        for _ in range(300):
            met.append(reader.hash[1:].split("?")[0])
            if "bench=" not in reader.hash:
                break
            reader.press("#bench-next")
        assert list(dict.fromkeys(met[:-1])) == main
        assert met[-1] == "final"


def test_every_act_stands_on_a_face(window: Window, site: Site) -> None:
    reader = Reader(window, site, BOARD)
    ticks = reader.run("document.querySelectorAll('main > .step .act').length")
    reader.press(".to-bench")
    met: set[str] = set()
    while "bench=" in reader.hash:
        boxes = "Array.from(document.querySelectorAll('.act input'))"
        met |= set(reader.run(f"{boxes}.filter(one => one.checkVisibility()).map(one => one.id)"))
        reader.press("#bench-next")
    assert len(met) == ticks


def test_targets_at_the_foot_are_large(window: Window, site: Site) -> None:
    """Source: 20 mm at 96 dpi are 75.6 CSS px (the design asks for about 20 mm)."""
    reader = Reader(window, site, hash="open-the-battery-plug?bench=1")
    for id in ("bench-back", "bench-next"):
        assert reader.run(f"document.getElementById('{id}').getBoundingClientRect().height") >= 76


def test_a_remedy_leads_back_to_its_check(window: Window, site: Site) -> None:
    reader = Reader(window, site, hash="seat-the-keypad-flex-again?bench=1")
    for _ in range(20):
        reader.press("#bench-next")
        if not reader.hash.startswith("#seat-the-keypad-flex-again"):
            break
    assert reader.hash == "#try-keys?bench=1"
