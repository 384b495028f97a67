"""Screws read from their words, as standards, suppliers and benches write them.

Sources: ISO 965-1, ISO 1478, ISO 1501, ASME B1.1 and B1.10M for threads; ISO 4762, 7046-2, 7049 for product
designations; ISO 225 for the length of countersunk screws; trade forms: common practice, no source.
"""

from decimal import Decimal

import pytest

from guidebuild.device.designation import parse_screw
from guidebuild.device.vocabulary import heads
from tests.outside.screws import screw, span_of

# words | thread | diameter | pitch | length, all in mm; `-` is not said
READ = """
M8                                    | M8      | 8      | 1.25   | -
M8x1                                  | M8x1    | 8      | 1      | -
M10x1-LH                              | M10x1   | 10     | 1      | -
M10-6H                                | M10     | 10     | 1.5    | -
M20-6g                                | M20     | 20     | 2.5    | -
M6x0,75-6h                            | M6x0.75 | 6      | 0.75   | -
M1.6x4                                | M1.6    | 1.6    | 0.35   | 4
M1,6 x 4                              | M1.6    | 1.6    | 0.35   | 4
M1.6x0.35x4                           | M1.6    | 1.6    | 0.35   | 4
M2.5×0.45×6                           | M2.5    | 2.5    | 0.45   | 6
M2.5x0.35x6                           | M2.5x0.35 | 2.5  | 0.35   | 6
M3x8                                  | M3      | 3      | 0.5    | 8
M3 x 8 mm                             | M3      | 3      | 0.5    | 8
M12x1.25x30                           | M12x1.25 | 12    | 1.25   | 30
M1.7x3                                | M1.7    | 1.7    | 0.35   | 3
M2.6x5                                | M2.6    | 2.6    | 0.45   | 5
ST2.2x6.5                             | ST2.2   | 2.2    | 0.8    | 6.5
ST3,5 x 16 - C - Z                    | ST3.5   | 3.5    | 1.3    | 16
ISO 7049 - ST3,5 x 16 - C - Z         | ST3.5   | 3.5    | 1.3    | 16
#4-40 x 1/4 in                        | #4-40   | 2.8448 | 0.635  | 6.35
No. 4-40 x 1/4"                       | #4-40   | 2.8448 | 0.635  | 6.35
0-80 UNF-2A                           | #0-80   | 1.524  | 0.3175 | -
1-64 UNC-2A                           | #1-64   | 1.8542 | 0.39688 | -
2-56 UNC-2A x 3/8 in                  | #2-56   | 2.1844 | 0.45357 | 9.525
1/4-20 x 1 1/2 in                     | 1/4-20  | 6.35   | 1.27   | 38.1
S0.9 x 0.225 - 5h3                    | S0.9    | 0.9    | 0.225  | -
S0.8x1.4                              | S0.8    | 0.8    | 0.2    | 1.4
0.80 UNM                              | 0.80 UNM | 0.8   | 0.2    | -
ISO 7046-2 M5 x 20                    | M5      | 5      | 0.8    | 20
ISO 7046-2 M5 x 20 8.8 Z              | M5      | 5      | 0.8    | 20
Hexagon socket head cap screw ISO 4762 - M6 x 35 - 10.9 | M6 | 6 | 1 | 35
DIN 7985 - M2 x 4 - 4.8 - H           | M2      | 2      | 0.4    | 4
"""


def number(text: str) -> Decimal | None:
    return None if text == "-" else Decimal(text)


@pytest.mark.parametrize(
    "row", READ.strip().splitlines(), ids=lambda row: row.split("|")[0].strip()
)
def test_thread_pitch_and_length(row: str) -> None:
    words, thread, diameter, pitch, length = (cell.strip() for cell in row.split("|"))
    found = screw(words)
    assert found.thread == thread
    assert (found.diameter, found.pitch) == (number(diameter), number(pitch))
    assert found.length == number(length)
    assert found.text == words


# words | head | drive
WORDS = """
M2.5x8 countersunk TX8                | countersunk        | TX8
M2.5x8 csk Torx 8                     | countersunk        | TX8
M2.5x8 flat head T8                   | countersunk        | TX8
M2x4 pan PH1                          | pan                | PH1
M1.6x3 PH00 pan                       | pan                | PH00
M3x6 pan Phillips 1                   | pan                | PH1
M3x6 pan Pozidriv 1                   | pan                | PZ1
M3x6 pan cross-H 1                    | pan                | PH1
M3x8 pan with collar PH1              | pan-collar         | PH1
M3x8 raised countersunk PH1           | raised-countersunk | PH1
M3x8 oval PH1                         | raised-countersunk | PH1
M3x8 socket head cap hex 2.5          | socket             | hex 2.5
M3x8 button hex 2                     | button             | hex 2
M3x8 button hex socket 2 mm           | button             | hex 2
M3x5 grub hex 1.5                     | set                | hex 1.5
M3x10 cheese slot 0.8x4               | cheese             | slot 0.8x4
M3x10 cheese slotted 0.8 x 4          | cheese             | slot 0.8x4
M4x10 hex head AF 7                   | hexagon            | AF7
M3x6 pan TX10 pin                     | pan                | TR10
M3x6 pan TX pin 10                    | pan                | TR10
M3x6 socket hex 2.5 with pin          | socket             | hex-pin 2.5
M3x6 pan TR10                         | pan                | TR10
M2x3 pan five-lobe 0.8                | pan                | five-lobe 0.8
M2x3 pan tri-wing 1                   | pan                | tri-wing 1
M2x3 pan Y 2.5                        | pan                | Y2.5
M2x3 pan JIS 1                        | pan                | JIS1
ISO 14583 M3 x 8                      | pan                | TX10
ISO 7045 M2 x 4 H                     | pan                | PH0
ISO 7045 M2 x 4 Z                     | pan                | PZ0
DIN 7985 M2 x 4                       | pan                | PH1
ISO 7046-2 M5 x 20 8.8 Z1             | countersunk        | PZ2
"""


@pytest.mark.parametrize(
    "row", WORDS.strip().splitlines(), ids=lambda row: row.split("|")[0].strip()
)
def test_head_and_drive(row: str) -> None:
    words, head, drive = (cell.strip() for cell in row.split("|"))
    found = screw(words)
    assert (found.head, found.drive) == (head, drive)


def test_what_else_a_bag_says() -> None:
    found = screw("M3x8 pan TX10 A2-70 patch captive")
    assert (found.strength, found.locking, found.captive) == ("A2-70", "patch", True)


NO_SCREW = [
    "",
    "x",
    "M",
    "M3x",
    "pan PH1",
    "M3x6 blorb",
    "M3x6 pan PH9",
    "M3x6 pan TX11",
    "M3x8x20",
    "M2.5x8countersunk",
    "#4-41 x 1/4 in",
    "M3x6 pan PH1 and more",
    "M3x1/4 in",
]


@pytest.mark.parametrize("words", NO_SCREW)
def test_words_that_are_no_screw(words: str) -> None:
    assert parse_screw(words, span_of(words)) is None


def test_only_countersunk_and_headless_screws_are_measured_overall() -> None:
    """ISO 225: the length of countersunk screws includes the head; a set screw has none."""
    overall = {word for word, head in heads().items() if head.overall}
    assert overall == {"countersunk", "raised-countersunk", "set"}
