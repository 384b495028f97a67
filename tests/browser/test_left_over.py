"""One left over: whichever hole was forgotten, its screw leads the reader to the step that puts it in."""

import re
from functools import cache
from urllib.parse import urlencode

import pytest

from guidebuild.device.things import Hole
from guidebuild.guide.content import GuideRead
from guidebuild.outputs.html.paths import guide_page
from guidebuild.read.content import read_content
from tests.browser.chrome import Browser
from tests.browser.put_in import every_answer, put_in
from tests.browser.reader import Reader
from tests.browser.site import CONTENT, GUIDES, Site


@cache
def _guides() -> dict[str, GuideRead]:
    return {guide_page(one.guide.path, "en"): one for one in read_content(CONTENT)[0].guides}


def _named(place: str, hole: Hole) -> bool:
    """Whether a row speaks of a hole: its group by name, and its own name among the holes."""
    group, _, holes = place.lower().rpartition(", hole")
    names = re.split(r", | and ", holes.removeprefix("s").strip())
    words = hole.group.replace("-", " ").split()
    return hole.hole.replace("-", " ") in names and words[-1].rstrip("s") in group


@pytest.mark.parametrize("page", GUIDES)
def test_every_hole_is_found_from_its_screw(browser: Browser, site: Site, page: str) -> None:
    """In every unit that a reader can have: the row that names the hole leads to its step, where its number stands."""
    read = _guides()[page]
    silent: set[str] = set()
    reached: set[str] = set()
    for answers in every_answer(read):
        Reader(browser, site, page, "left" + (f"?{urlencode(answers)}" if answers else ""))
        told = browser.ask("mat")
        silent |= {row["place"] for row in told["rows"] if ", hole" in row["place"]}
        for key, step in put_in(read, answers).items():
            hole = read.device.things[key]
            assert isinstance(hole, Hole)
            rows = [row for row in told["rows"] if _named(row["place"], hole)]
            leads = [row for row in rows if step in row["steps"]]
            assert leads, (answers, key, step, rows)
            assert any(leads[0]["mark"] in mark for mark in told["steps"][step]), (answers, key)
            reached |= {row["place"] for row in leads}
    assert reached == silent  # and no row speaks of a hole that no unit has


def test_the_way_is_walked(browser: Browser, site: Site) -> None:
    """Picked by its number, the screw's row is left alone; its link shows the step."""
    reader = Reader(browser, site, hash="left")
    reader.press('tr[data-mark="3"] button.ref')
    reader.press('table.mat tr[data-mark="3"] td:nth-child(5) a')
    reader.until("location.hash.startsWith('#fit-the-lower-cover-screws')")
    top = "document.getElementById('fit-the-lower-cover-screws').getBoundingClientRect().top"
    reader.until(f"Math.abs({top}) < 60")
