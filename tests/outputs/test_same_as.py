"""A step that repeats another says so, and says its acts again."""

from pathlib import Path

from guidebuild.outputs.html.page.guide import guide_view
from guidebuild.outputs.html.page.reading import reading
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content

DEVICE = """device: box
name: Box
base: base
parts:
  base: Base
  lid: Lid
fasteners:
  lid-screws: {holds: lid, screw: M3x8 pan PH1, torque: by-hand, holes: 2}
"""
GUIDE = """---
title: Look into the box
device: box
goal: {inspect: lid}
---

# Look

## Open the lid

```part
remove: lid
undo: lid-screws
```

## Close the lid

```part
refit: lid
do-up: lid-screws
```

## Open it once more

```step
same-as: open-the-lid
```

## Close it once more

```step
same-as: close-the-lid
```
"""


def test_its_acts_are_said_again(tmp_path: Path) -> None:
    (tmp_path / "devices/box").mkdir(parents=True)
    (tmp_path / "guides/box").mkdir(parents=True)
    (tmp_path / "devices/box/device.yaml").write_text(DEVICE, encoding="utf-8")
    (tmp_path / "guides/box/look.md").write_text(GUIDE, encoding="utf-8")
    content, _ = read_content(tmp_path)
    (one,) = content.guides
    view = guide_view(
        reading(prove(one.guide, one.device), "en", content.tools, content.settings), {}
    )
    said = [
        ["".join(piece.words for piece in line.do) for line in step.lines] for step in view.steps
    ]
    assert said[2] == said[0] == ["Remove 2 screws M3×8", "Take off the lid"]
    assert said[3] == said[1]
    assert len({line.id for step in view.steps for line in step.lines}) == 8
