"""Ticks and values survive a reload; the job record goes out as a file and comes back."""

import json

from tests import needs
from tests.browser.chrome import A4, Browser
from tests.browser.paper import Paper
from tests.browser.reader import BOARD, Reader
from tests.browser.site import Site
from tests.browser.window import Window

STATE = "[document.getElementById('2.1').checked, document.getElementById('record.serial').value]"
CATCH = """(() => { window.caught = []; const make = URL.createObjectURL;
  URL.createObjectURL = blob => { blob.text().then(text => caught.push(text)); return make.call(URL, blob); };
  HTMLAnchorElement.prototype.click = function () {}; })()"""


def anew(reader: Reader) -> None:
    """Starts a new record, as a reader does for the next device."""
    reader.after(300)
    reader.run("(() => { window.confirm = () => true; })()")
    reader.press("#record-new")
    reader.after(300)


def filled(window: Window, site: Site) -> Reader:
    """A page with a tick and a serial number."""
    reader = Reader(window, site)
    reader.after(300)
    reader.tick("2.1")
    reader.write("record.serial", "P2-00417")
    reader.after(500)
    return reader


def test_both_stores_keep_it(window: Window, site: Site) -> None:
    reader = filled(window, site)
    reader.reload()
    assert reader.run(STATE) == [True, "P2-00417"]
    reader.run("localStorage.clear()")
    reader.reload()
    assert reader.run(STATE) == [True, "P2-00417"]


def test_a_box_can_be_cleared_again(window: Window, site: Site) -> None:
    reader = filled(window, site)
    reader.tick("2.1")
    reader.after(500)
    reader.reload()
    assert reader.run(STATE) == [False, "P2-00417"]


def test_another_guide_knows_nothing_of_it(window: Window, site: Site) -> None:
    reader = filled(window, site)
    reader.go(site, BOARD)
    boxes = "Array.from(document.querySelectorAll('.act input'))"
    assert reader.run(f"{boxes}.some(box => box.checked)") is False


def test_saved_and_loaded(window: Window, site: Site) -> None:
    reader = filled(window, site)
    reader.run(CATCH)
    reader.press("#record-save")
    reader.after(200)
    job = json.loads(reader.run("caught[0]"))
    assert job["guide"] == "LP2-03/2"
    assert {key: job["lines"][0][key] for key in ("step", "value")} == {
        "step": "LP2-03/2/2-F",
        "value": True,
    }
    anew(reader)
    assert reader.run(STATE) == [False, ""]
    text = json.dumps(json.dumps(job))
    reader.run(
        "(() => { const all = new DataTransfer(); all.items.add(new File(["
        + text
        + "], 'job.json'));"
        " const box = document.getElementById('record-load'); box.files = all.files;"
        " box.dispatchEvent(new Event('change')); })()"
    )
    reader.after(400)
    assert reader.run(STATE) == [True, "P2-00417"]
    assert reader.seen("#record-said") == ["The record was loaded."]


def test_a_value_is_judged_by_its_limits(window: Window, site: Site) -> None:
    reader = Reader(window, site, BOARD)
    box = reader.run("document.querySelector('input[data-max]').id")
    reader.write(box, "3,5")
    assert "Within the limits." in reader.seen(".verdict")
    reader.write(box, "350")
    assert "Outside: do not go on." in reader.seen(".verdict")
    reader.write(box, "")


@needs.program("pdftotext")
def test_what_was_written_is_printed_whole(browser: Browser, site: Site) -> None:
    """However long it is: a field on the screen scrolls, one on paper can't."""
    reader = Reader(browser, site)
    serial = "P2-00417/" + "0123456789" * 6
    reader.write("record.serial", serial)
    reader.write("record.who", "M. Example, third floor, room 3.14, by the window")
    paper = Paper(browser.printed(A4))
    told = "".join(paper.sides)
    assert serial in told and "room3.14,bythewindow" in told
    assert paper.beyond(8, A4) == []
