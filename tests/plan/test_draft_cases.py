"""Drafts of every part of the small devices that the proof is tried on: oil, springs, shims, mains, hinges, glue."""

import shutil
from pathlib import Path

import pytest

from guidebuild.build.check import check
from guidebuild.build.drafting import Asked, drafted
from guidebuild.read.content import read_content
from guidebuild.source.finding import Finding

CASES = Path(__file__).parents[1] / "proof" / "cases"
GOALS = ("replace", "remove", "inspect")
NAMES = sorted(folder.name for folder in CASES.iterdir() if (folder / "device.yaml").is_file())
BESIDE = {"picture-missing", "tool-not-listed"}  # these records draw nothing, and list no tools


@pytest.mark.parametrize("case", NAMES)
def test_every_part_of_a_small_device(case: str, tmp_path: Path) -> None:
    root = tmp_path / "content"
    (root / "guides" / case).mkdir(parents=True)
    (root / "devices" / case).mkdir(parents=True)
    shutil.copy(CASES / case / "device.yaml", root / "devices" / case)
    devices = read_content(root, rest=True)[0].devices
    if case not in devices:
        pytest.skip("this record bears another id than its folder")
    for part in devices[case].parts:
        for goal in GOALS:
            _, text, _ = drafted(root, Asked(case, part.id, goal))
            (root / "guides" / case / f"{goal}-{part.id}.md").write_text(text, encoding="utf-8")
    result = check(root, cache=False)
    assert not result.faults
    assert not [_told(one) for one in result.findings if one.rule not in BESIDE]


def _told(found: Finding) -> str:
    return f"{found.span.source.path}:{found.span.line}: {found.rule}: {found.message}"
