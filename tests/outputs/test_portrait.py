"""A device whose view is only outlines still looks drawn: its screws and its axis are there."""

import re

from tests.outputs.demo import BOARD, page

VALVE = "replace-the-seat-ring"


def test_a_plain_outline_has_its_screws_and_its_axis() -> None:
    """Alder V3: two cap screws, a drain screw and four bonnet screws are seen; the three under the bonnet are not."""
    drawn = page(VALVE).portrait
    places = re.findall(r'<g transform="translate\(([-\d.]+) ([-\d.]+)\)">', drawn)
    assert {(float(x), float(y)) for x, y in places} == {
        *((34, 14), (66, 14), (50, 146)),
        *((x, y) for x in (20, 80) for y in (62, 82)),
    }
    (axis,) = re.findall(r'<path class="ctr" d="M([\d.]+),', drawn)
    assert float(axis) == 50


def test_a_view_that_somebody_drew_is_left_as_it_is() -> None:
    assert "translate(" not in page(BOARD).portrait
