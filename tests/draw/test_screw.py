"""Screws are drawn true: length as designated, thread at its pitch, head by its standard, drive by its size.

Sources: ISO 225 (where a length is measured), ISO 965 (root diameter d - 1.226869 P), ISO 7045, 7046, 4762
(heads), ISO 10664 (hexalobular).
"""

from itertools import pairwise

import pytest

from guidebuild.draw.screw import from_above, screw_box, screw_svg, screw_symbols, shadow, size_of
from guidebuild.draw.thread import Shank, shank
from tests.draw.reading import corners, extent, millimetres, of_class, tree, view_box
from tests.outside.screws import screw

UNDER = ["M1.6x4 pan PH00", "M2x4 pan TX6", "M2.5x12 pan TX8", "M3x8 socket hex 2.5", "M4x20 button hex 2.5",
         "ST2.2x6.5 pan PH0", "#4-40 x 1/4 in pan PH1", "M3x10 cheese slot 0.8", "M4x10 hexagon AF 7"]  # fmt: skip
OVERALL = [
    "M2.5x8 countersunk TX8",
    "M3x10 countersunk PH1",
    "M3x6 set hex 1.5",
    "ST2.9x9.5 countersunk PH1",
]


@pytest.mark.parametrize("words", UNDER)
def test_length_under_the_head(words: str) -> None:
    one = screw(words)
    least, most = extent(shadow(one), 0)
    assert most == pytest.approx(float(one.length or 0), abs=2e-3)
    assert least < 0  # the head stands before the bearing face
    assert -least == pytest.approx(size_of(one).before, abs=2e-3)


@pytest.mark.parametrize("words", OVERALL)
def test_length_overall(words: str) -> None:
    one = screw(words)
    least, most = extent(shadow(one), 0)
    assert most - least == pytest.approx(float(one.length or 0), abs=2e-3)
    assert least == pytest.approx(0, abs=1e-9)


def test_only_the_dome_of_a_raised_head_stands_out() -> None:
    least, most = extent(shadow(screw("M3x8 raised-countersunk PH1")), 0)
    assert most == pytest.approx(8, abs=2e-3)
    assert -1 < least < 0


@pytest.mark.parametrize("words", UNDER + OVERALL)
def test_thread_at_true_pitch_and_depth(words: str) -> None:
    size = size_of(screw(words))
    edge = shank(Shank(size.diameter, size.pitch, 0, size.length))
    crests = sorted({round(x, 6) for x, y in edge if y == pytest.approx(size.diameter / 2)})
    starts = crests[:-2:2]  # each crest has two ends, the last is the tip's
    assert [b - a for a, b in pairwise(starts)] == pytest.approx([size.pitch] * (len(starts) - 1))
    assert len(starts) >= 4
    root = min(abs(y) for x, y in edge if x < size.length - size.pitch)
    assert 2 * root == pytest.approx(size.diameter - 1.226869 * size.pitch)


def test_the_far_edge_of_the_thread_lies_half_a_pitch_on() -> None:
    edge = shank(Shank(3, 0.5, 0, 8))
    near = min(x for x, y in edge if y == 1.5)
    far = min(x for x, y in edge if y == -1.5)
    assert far - near == pytest.approx(0.25)


# head diameter and height of the standards, greatest values in mm
HEADS = {
    "M3x8 pan PH1": (5.6, 2.4),  # ISO 7045
    "M2.5x8 countersunk TX8": (4.7, 1.5),  # ISO 7046, 2009
    "M4x10 socket hex 3": (7.0, 4.0),  # ISO 4762
    "M3x8 button hex 2": (5.7, 1.65),  # ISO 7380-1
    "M5x10 cheese slot 1.2": (8.5, 3.3),  # ISO 1207
}


@pytest.mark.parametrize(("words", "sizes"), HEADS.items())
def test_heads_by_their_standard(words: str, sizes: tuple[float, float]) -> None:
    one = screw(words)
    low, high = extent(shadow(one), 1)
    assert high - low == pytest.approx(sizes[0], abs=2e-3)
    assert float(size_of(one).head.height) == pytest.approx(sizes[1])


@pytest.mark.parametrize(("drive", "across"), {"TX6": 1.75, "TX10": 2.8, "TX25": 4.5}.items())
def test_hexalobular_recess_across_points(drive: str, across: float) -> None:
    """ISO 10664, dimension A."""
    recess = of_class(tree(f"<g>{from_above(screw(f'M5x10 pan {drive}'))}</g>"), "ink")[0]
    low, high = extent(recess.get("d", ""), 1)
    assert high - low == pytest.approx(across, abs=3e-3)


def test_hexagon_across_flats_and_slot_width() -> None:
    hexagon = of_class(tree(f"<g>{from_above(screw('M4x10 socket hex 3'))}</g>"), "ink")[0]
    low, high = extent(hexagon.get("d", ""), 0)
    assert high - low == pytest.approx(3, abs=3e-3)
    slot = of_class(tree(f"<g>{from_above(screw('M4x10 cheese slot 1.2'))}</g>"), "ink")[0]
    low, high = extent(slot.get("d", ""), 1)
    assert high - low == pytest.approx(1.2, abs=3e-3)


DRIVES = ["PH1", "PZ1", "JIS 1", "TX10", "TR10", "hex 2", "hex-pin 2", "slot 0.8", "square 1", "tri-wing 1", "Y2.5",
          "five-lobe 1.2", "two-hole", "one-way", "triangle"]  # fmt: skip


def test_every_drive_looks_different() -> None:
    assert len({from_above(screw(f"M3x8 pan {drive}")) for drive in DRIVES}) == len(DRIVES)


def test_scale_and_common_box() -> None:
    short, long = screw("M2x4 pan TX6"), screw("M4x20 pan TX20")
    box = screw_box(short, long)
    drawings = [tree(screw_svg(one, 2, box)) for one in (short, long)]
    assert view_box(drawings[0]) == view_box(drawings[1])  # so their lengths begin on one line
    width, height = millimetres(drawings[0])
    assert width / view_box(drawings[0])[2] == pytest.approx(2, abs=1e-3)
    assert height / view_box(drawings[0])[3] == pytest.approx(2, abs=1e-3)


def test_used_and_inline_drawings_hold_the_same_shadow() -> None:
    one = screw("M3x8 pan PH1")
    inline = of_class(tree(screw_svg(one)), "ink")[-1].get("d")
    symbol = tree(f"<g>{screw_symbols(one, one)}</g>")
    assert [node.get("id") for node in symbol] == ["hole", "s-M3-8-pan-PH1", "s-M3-pan-PH1-top"]
    assert symbol[1].get("d") == inline
    symbols = tree(f"<g>{screw_symbols(one, lying=(one,))}</g>")
    both = next(node for node in symbols if node.get("id", "").endswith("-both"))
    (used,) = tree(screw_svg(one, by_use=True)).iter("use")
    assert used.get("href") == f"#{both.get('id')}"
    assert [each.get("href") for each in both.iter("use")] == [
        "#s-M3-pan-PH1-top",
        "#s-M3-8-pan-PH1",
    ]


def test_a_screw_without_length_head_or_pitch_is_still_drawn() -> None:
    assert len(corners(shadow(screw("M3")))) > 20
