"""A finger on a touch screen does all that keys do; a stroke of a sleeve turns no face."""

from tests.browser.reader import HEAD, Reader
from tests.browser.site import Site
from tests.browser.window import Window


def test_bench_mode_by_taps(window: Window, site: Site) -> None:
    reader = Reader(window, site, hash="switch-off?bench=1")
    reader.tap("#bench-next")
    reader.until("location.hash !== '#switch-off?bench=1'")
    reader.tap("#bench-back")
    reader.until("location.hash === '#switch-off?bench=1'")
    reader.tap("#bench-leave")
    reader.until("!location.hash.includes('bench')")
    assert reader.seen(".step h3")


def test_the_whole_line_is_the_target_of_its_box(window: Window, site: Site) -> None:
    """Its words, too: a box alone is small under a glove."""
    reader = Reader(window, site, hash="open-the-battery-plug?bench=2")
    line = "#open-the-battery-plug .act:not(.other-face)"
    reader.tap(f"{line} .say")
    reader.until(f"document.querySelector('{line} input').checked")
    high = reader.run(f"document.querySelector('{line} label').getBoundingClientRect().height")
    assert high >= 75.6  # 20 mm at 96 dpi, as the design asks for


def test_an_answer_by_a_tap(window: Window, site: Site) -> None:
    reader = Reader(window, site, HEAD)
    reader.tap('label:has(> input[name="revision"][value="a"])')
    reader.until("location.hash.includes('revision=a')")


def test_a_stroke_turns_no_face(window: Window, site: Site) -> None:
    """A judgement of ours: a wet glove that brushes the screen must not lead to another step."""
    reader = Reader(window, site, hash="switch-off?bench=1")
    for start, end in (((1000, 300), (300, 300)), ((300, 300), (1000, 300))):
        window.swipe(start, end)
        reader.after(300)
        assert reader.hash == "#switch-off?bench=1"


def test_a_picture_is_enlarged_by_a_tap(window: Window, site: Site) -> None:
    reader = Reader(window, site, HEAD)
    reader.tap(".photo .zoom")
    reader.until("document.querySelector('.zoom').checked")
