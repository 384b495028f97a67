"""What a step's drawings show: each form of the device by itself, and in words what found no place for its number."""

import re
from pathlib import Path

from guidebuild.build.site_files import site_files
from guidebuild.translate.messages.text import plain
from tests.outputs.demo import BOARD, page

RECORD = """\
device: plate
name: Plate
base: base
options:
  form:
    ask: Is there a second lug?
    values: {a: "No", b: "Yes"}
parts:
  base: Base
  lid: Lid
  lug: {name: Lug, when: form = b}
fasteners:
  lid-screws:
    holds: lid
    screw: M2x4 pan PH0
    torque: by-hand
    view: front
    holes: {%s}
views:
  front:
    size: [60, 40]
    outline: {base: M0 0h60v40h-60z, lid: M5 5h50v30h-50z, lug: M20 15h5v5h-5z}
"""
GUIDE = """\
---
title: Take the lid off
device: plate
goal: {take-off: lid}
---

# Work

## Take the lid off

```part
remove: lid
undo: [lid-screws]
```
"""


def built(root: Path, holes: str) -> str:
    """The page of a guide that takes a lid off, held by these holes."""
    (root / "devices" / "plate").mkdir(parents=True)
    (root / "guides" / "plate").mkdir(parents=True)
    (root / "devices" / "plate" / "device.yaml").write_text(RECORD % holes, encoding="utf-8")
    (root / "guides" / "plate" / "lid.md").write_text(GUIDE, encoding="utf-8")
    return site_files(root).files["en/plate/lid.html"].decode()


def figures(text: str) -> list[str]:
    return re.findall(
        r"<figure[^>]*>(?:(?!</figure>).)*class=\"view\".*?</figure>", text, re.DOTALL
    )


def uses(text: str, figure: str) -> str:
    """A figure with everything that it refers to, written out."""
    inside = dict(re.findall(r'<g id="(_[0-9a-f]+)">(.*?)</g>(?=<g id="_|</defs>)', text))
    while found := re.search(r'<use href="#(_[0-9a-f]+)"/>', figure):
        figure = figure.replace(found[0], inside[found[1]])
    return figure


def test_who_has_no_lug_is_shown_none(tmp_path: Path) -> None:
    text = built(tmp_path, "left: [10, 20], right: [50, 20]")
    without, with_ = (uses(text, one) for one in figures(text)[:2])
    (lug,) = re.findall(r'<g id="(v-front-\d+)"><path[^>]*d="M20,15', text)
    assert 'data-when="form=a"' in without and f"#{lug}" not in without
    assert 'data-when="form=b"' in with_ and f"#{lug}" in with_
    assert without.count("data-label") == with_.count("data-label") == 3


def test_what_found_no_place_is_told_where_it_is(tmp_path: Path) -> None:
    grid = [(x, y) for y in range(7, 36, 4) for x in range(7, 54, 4)]
    holes = ", ".join(f"h{n}: [{x}, {y}]" for n, (x, y) in enumerate(grid))
    text = built(tmp_path, holes)
    figure = figures(text)[0]
    told = re.search(
        r"<figcaption>.*Without a number, for want of room: (.*?)</figcaption>", figure
    )
    assert told is not None
    placed = uses(text, figure).count("data-label")
    places = re.findall(
        r" (?:at the (?:top|bottom)(?: left| right)?|on the left|on the right|in the middle)",
        told[1],
    )
    assert 0 < placed < len(grid) + 1
    assert placed + len(places) == len(grid) + 1  # all holes and the lid


def test_the_fan_is_drawn_only_where_there_is_one() -> None:
    """Of the stroboscope some have a fan: every step that shows its place is drawn twice."""
    several = [step for step in page(BOARD).steps if len(step.pictures) > 1]
    assert len(several) >= 10
    for step in several:
        conditions = [plain(one.when.words) for one in step.pictures if one.when]
        assert len(conditions) == len(set(conditions)) == len(step.pictures)
