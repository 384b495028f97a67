"""Whatever words stand on a strip-down sheet, the record of it is read without findings."""

import csv
import random
from io import StringIO
from pathlib import Path

from guidebuild.plan.start.record import record
from guidebuild.plan.start.strip import COLUMNS, HELD_BY, read_strip
from guidebuild.read.content import read_content

WORDS = (
    "", "A", "Cover", "Body", "Éx", "a: b", "# x", "{q}", '"q', "it's", "-", "1", "x,y", "power", "device", "ß",
    "日本", "~", "yes", "End cap", "Two\nlines",
)  # fmt: skip
CELLS = {
    "held by": tuple(HELD_BY),
    "screw": ("", "M3x6 pan PH1", "M8x12 cylinder hex 6"),
    "torque": ("", "1 N·m", "by hand", "0,5 Nm"),
    "count": ("", "1", "4"),
    "size": ("", "10x5", "0.1 x 400"),
    "hazard": ("", "danger: A. / B. / C.", 'warning: A, b: c. / # / "x".'),
    "works": ("", "Printing", "A+B"),
}
SHEETS = 120


def sheet(dice: random.Random) -> str:
    """One of up to seven lines, of any words."""
    file = StringIO()
    rows = csv.writer(file)
    rows.writerow(COLUMNS)
    for _ in range(dice.randint(1, 7)):
        rows.writerow([dice.choice(CELLS.get(column, WORDS)) for column in COLUMNS])
    return file.getvalue()


def test_the_record_of_any_sheet_is_read(tmp_path: Path) -> None:
    home = tmp_path / "devices/d"
    home.mkdir(parents=True)
    (tmp_path / "guides").mkdir()
    written = 0
    for seed in range(SHEETS):
        dice = random.Random(seed)
        removals, _ = read_strip(sheet(dice))
        if not removals:
            continue
        text = record("d", "D one", dice.choice(("Body", "Frame", "A")), removals)
        (home / "device.yaml").write_text(text, encoding="utf-8")
        _, findings = read_content(tmp_path, rest=True)
        assert not findings, (seed, findings[0].rule, findings[0].message)
        written += 1
    assert written > SHEETS / 2
