"""Photographs: every browser finds a file, marks stay in their places when enlarged, and nothing tells of a place."""

import io

import pytest
from PIL import Image

from tests.browser.chrome import Browser
from tests.browser.reading import read
from tests.browser.site import THEMES, Site

GUIDE = "en/larch-p2/replace-the-print-head.html"


def test_three_widths_and_a_file_for_old_browsers(site: Site) -> None:
    """JPEG for all, WebP where it pays; none is loaded late, since print loses such pictures."""
    page = read(site.folder / GUIDE)
    pictures = [
        one for one in page.each("img") if one.get("class") != "still"
    ]  # those are of films
    assert len(pictures) >= 2
    for picture in pictures:
        assert picture["src"].endswith(".jpg") and picture["alt"] and "loading" not in picture
        assert [one.split()[1] for one in picture["srcset"].split(", ")] == [
            "480w",
            "960w",
            "1600w",
        ]
        assert int(picture["width"]) > int(
            picture["height"]
        )  # upright, though the camera lay on its side


def test_no_metadata_leaves_the_house(site: Site) -> None:
    """No EXIF, no profile, no comment in any picture of the site."""
    files = [path for path in (site.folder / "photos").rglob("*") if path.is_file()]
    assert len(files) >= 6
    for file in files:
        data = file.read_bytes()
        with Image.open(io.BytesIO(data)) as picture:
            assert not picture.getexif() and not {"icc_profile", "comment"} & picture.info.keys()
        assert b"Exif" not in data and b"Tarnwick" not in data


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("size", [(1366, 650), (390, 800), (820, 1180)])
def test_marks_stay_in_place_when_enlarged(
    browser: Browser, sites: dict[str, Site], theme: str, size: tuple[int, int]
) -> None:
    """The marks' places in per cent of the picture, before and after; the whole fits the screen; Escape or a
    second click puts it back."""
    browser.screen(*size)
    browser.open(sites[theme].url(GUIDE))
    before = browser.ask("marks_on_photo", enlarge=False)
    after = browser.ask("marks_on_photo", enlarge=True)
    assert len(before["places"]) >= 3
    assert after["places"] == [pytest.approx(place, abs=0.3) for place in before["places"]]
    assert after["width"] > 1.02 * before["width"]
    assert after["fits"]
    again = browser.ask("marks_on_photo", enlarge=False)
    assert again["width"] == before["width"]


def test_escape_puts_an_enlarged_picture_back(browser: Browser, site: Site) -> None:
    browser.screen(1366, 650)
    browser.open(site.url(GUIDE))
    assert browser.ask("marks_on_photo", enlarge=True)["fits"]
    browser.value("document.dispatchEvent(new KeyboardEvent('keydown', {key: 'Escape'}))")
    assert browser.value("document.querySelectorAll('.zoom:checked').length") == 0
