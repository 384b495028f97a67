"""Finding the way: search on the start page, and one screw left over."""

from tests.browser.reader import HEAD, Reader
from tests.browser.site import Site
from tests.browser.window import Window


def test_search_by_what_is_seen(window: Window, site: Site) -> None:
    reader = Reader(window, site, "START.html")
    reader.write("find", "white lines")
    assert reader.seen("[data-find] a") == ["Replace the print head"]
    reader.write("find", "CAPACITOR discharge")
    assert reader.seen("[data-find] a") == ["Replace the control board"]
    reader.write("find", "no such thing")
    assert reader.seen("[data-find] a") == []
    assert reader.seen("#found") == ["Nothing found"]


def test_a_screw_left_over_at_the_end(window: Window, site: Site) -> None:
    reader = Reader(window, site, HEAD, "left")
    head = 'tr[data-step="set-the-head-on-its-posts"]'
    assert reader.seen(f"{head} .undo a")[:4] == ["39", "36", "35", "34"]


def test_on_the_way_only_done_steps_are_undone(window: Window, site: Site) -> None:
    reader = Reader(window, site, HEAD, "left")
    at = "document.getElementById('left-at')"
    reader.run(
        f"(() => {{ {at}.value = 'close-the-cover'; {at}.dispatchEvent(new Event('change')); }})()"
    )
    assert reader.seen('tr[data-step="set-the-head-on-its-posts"] .undo a')[0] == "34"
    assert reader.seen('tr[data-step="fit-the-upper-cover-screws"] .undo') == [
        "Its step is still to come."
    ]


def test_picking_a_number_hides_the_others(window: Window, site: Site) -> None:
    reader = Reader(window, site, HEAD, "left")
    reader.press('tr[data-mark="6"] button.ref')
    assert len(reader.seen("table.mat tbody tr")) == 1
    reader.press("#left-all")
    assert len(reader.seen("table.mat tbody tr")) > 6
