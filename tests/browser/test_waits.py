"""A wait counts down by the clock, says its end, and loses nothing while the tab sleeps."""

from tests.browser.reader import BOARD, Reader
from tests.browser.site import Site
from tests.browser.window import Window

BUTTON = ".wait button"
LATER = (
    "(() => {{ const now = Date.now.bind(Date); Date.now = () => now() + {seconds} * 1000; }})()"
)
BAR = "+document.querySelector('.wait .run').getAttribute('width')"
LEFT = "document.querySelector('.wait output').textContent"


def started(window: Window, site: Site) -> tuple[Reader, int]:
    """A page with its first wait running, and the seconds of it."""
    reader = Reader(window, site, BOARD)
    reader.press(BUTTON)
    reader.until(f"{BAR} > 0")
    return reader, int(reader.run(f"document.querySelector('{BUTTON}').dataset.seconds"))


def test_it_counts_down(window: Window, site: Site) -> None:
    reader, total = started(window, site)
    assert total == 300  # as the guide says: 5 min
    assert reader.run(LEFT) in {"4:59", "4:58", "4:57"}
    assert reader.seen(BUTTON)[0] == "Stop"
    reader.run(LATER.format(seconds=total / 2))
    reader.until(f"{BAR} >= 250")
    assert reader.run(f"{BAR} < 275")  # half of 500, and the seconds that a busy machine takes
    assert reader.run(LEFT).startswith("2:")


def test_its_end_is_told_by_the_clock(window: Window, site: Site) -> None:
    """As after an hour in which the tab was asleep."""
    reader, _ = started(window, site)
    reader.run(LATER.format(seconds=3600))
    reader.until(f"{BAR} === 500")
    assert reader.seen(".wait output")[0] == "Done"
    reader.press(BUTTON)
    reader.until(f"{LEFT}.startsWith('4:5')")


def test_it_can_be_stopped(window: Window, site: Site) -> None:
    reader, _ = started(window, site)
    reader.press(BUTTON)
    assert reader.run(LEFT) == "5:00"
    assert reader.run(BAR) == 0
    assert reader.seen(BUTTON)[0] == "Start"


def test_it_runs_on_in_bench_mode(window: Window, site: Site) -> None:
    """The same wait, on its face."""
    reader, _ = started(window, site)
    step = reader.run(f"document.querySelector('{BUTTON}').closest('.step').id")
    reader.press(f"#{step} .to-bench, .to-bench")
    for _ in range(20):
        if reader.seen(".wait output"):
            break
        reader.press("#bench-next")
    assert reader.seen(".wait output")[0].startswith("4:5")
