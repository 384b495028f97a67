"""A small change of the record changes few lines of the draft: what nothing happened to stays as it is."""

from difflib import unified_diff
from pathlib import Path

import pytest

from guidebuild.build.drafting import Asked, drafted
from tests.plan.drafted import copied

STRAP = """\
  motor-strap: {name: Motor strap, holds: motor, screw: M3x6 pan TX10, torque: by-hand, holes: 1}
  motor-screws:"""
FAN = """\
  fan-plug: {name: Fan plug, joins: [motor, main-board], style: latched}
  motor-plug:"""
GREASE = """\
hazards:
  grease:
    caution: The gear is greasy.
    result: Grease harms the skin.
    avoid: Wear gloves.
    when-handling: [motor]
"""
CHANGES = {  # what is there, what it becomes, and how many lines of the draft may go or come
    "another torque": ("torque: 0.30 N·m", "torque: 0.35 N·m", 0),
    "a longer screw elsewhere": ("screw: M2x6 pan TX6", "screw: M2x7 pan TX6", 0),
    "another hazard": (
        "hazards:\n",
        GREASE,
        12,
    ),  # told in each stage in which the motor is handled
    "another plug": (
        "  motor-plug:",
        FAN,
        30,
    ),  # in the two steps of the plugs beside it, and in a remedy
    "another group of screws": (
        "  motor-screws:",
        STRAP,
        48,
    ),  # two steps more; each group has its own
}


@pytest.mark.parametrize("change", CHANGES)
def test_few_lines_change(change: str, tmp_path: Path) -> None:
    old, new, most = CHANGES[change]
    root = copied(tmp_path)
    record = root / "devices/larch-p2/device.yaml"
    before = drafted(root, Asked("larch-p2", "motor"))[1].splitlines()
    text = record.read_text(encoding="utf-8")
    assert old in text
    record.write_text(text.replace(old, new, 1), encoding="utf-8")
    after = drafted(root, Asked("larch-p2", "motor"))[1].splitlines()
    lines = [line for line in unified_diff(before, after, n=0) if line[:3] not in ("---", "+++")]
    changed = [line for line in lines if line[0] in "+-"]
    assert len(changed) <= most, changed
    assert bool(changed) == bool(most)
