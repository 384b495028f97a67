"""Files that mean harm, or came about by accident: told, and read with little time and memory."""

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from guidebuild.read.content import read_content
from tests.hard.broken import PLAIN

GUIDE = "guides/larch-p2/hostile.md"
RECORD = "devices/larch-p2/device.yaml"
HEAD = "---\ntitle: Look inside\ndevice: larch-p2\ngoal: {inspect: main-board}\n---\n\n"
STEP = HEAD + "# Open the printer\n\n## Take the cover off\n\n"

Told = list[tuple[str, str, int, int]]


@pytest.fixture
def root(tmp_path: Path) -> Path:
    """A content folder that is right."""
    shutil.copytree(PLAIN, tmp_path / "content")
    return tmp_path / "content"


def told(root: Path) -> Told:
    """Rule, file, line and column of each finding, found by a child with little to spend."""
    command = [sys.executable, "-m", "tests.hard.child", str(root)]
    ran = subprocess.run(command, capture_output=True, text=True, check=False)
    assert ran.returncode == 0, ran.stderr[-2000:] or f"ended by signal {-ran.returncode}"
    return [(rule, path, line, column) for rule, path, line, column in json.loads(ran.stdout)]


def write(root: Path, name: str, text: str | bytes) -> None:
    (root / name).write_bytes(text.encode() if isinstance(text, str) else text)


def test_a_line_of_ten_megabytes(root: Path) -> None:
    write(root, GUIDE, HEAD + "x" * 10_000_000)
    assert told(root) == [("file-too-large", GUIDE, 1, 1)]


def test_a_line_of_half_a_megabyte(root: Path) -> None:
    write(root, GUIDE, HEAD + "x" * 500_000)
    assert told(root) == [("file-too-large", GUIDE, 7, 1)]


def test_letters_of_another_encoding(root: Path) -> None:
    write(root, GUIDE, HEAD.encode() + "# Öffnen\n".encode("latin-1"))
    assert told(root) == [("not-utf-8", GUIDE, 7, 3)]


def test_sixteen_bits_a_letter(root: Path) -> None:
    write(root, GUIDE, HEAD.encode("utf-16"))
    assert told(root) == [("not-utf-8", GUIDE, 1, 1)]


@pytest.mark.parametrize(
    "nested",
    ["[" * 100_000 + "]" * 100_000, "{a: " * 20_000 + "}" * 20_000, "\n" + "- " * 5_000 + "x"],
    ids=["lists", "maps", "dashes"],
)
def test_brackets_inside_brackets(root: Path, nested: str) -> None:
    lines = nested.replace("[" * 1000, "[" * 1000 + "\n ").replace(
        "{a: " * 1000, "{a: " * 1000 + "\n "
    )
    write(root, GUIDE, STEP + f"```part\nremove: {lines}\n```\n")
    rules = {rule for rule, *_ in told(root)}
    assert rules <= {"yaml-not-readable", "wrong-type", "file-too-large", "needs-quotes"}
    assert rules


def test_an_alias_bomb(root: Path) -> None:
    rows = ["a0: &a0 [cover, cover]"]
    rows += [f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 9)}]" for n in range(1, 12)]
    write(root, GUIDE, STEP + "```part\n" + "\n".join(rows) + "\nremove: *a11\n```\n")
    assert {rule for rule, *_ in told(root)} <= {"unknown-key", "wrong-type", "yaml-not-readable"}


def test_aliases_that_multiply_a_map(root: Path) -> None:
    points = "\n".join(f"    p{number}: [1, 2]" for number in range(3000))
    again = "\n".join(f"  {number}.jpg: *all" for number in range(3000))
    record = (root / RECORD).read_text(encoding="utf-8")
    write(root, RECORD, f"{record}\npictures:\n  all.jpg: &all\n{points}\n{again}\n")
    assert "yaml-not-readable" in {rule for rule, *_ in told(root)}


def test_a_comment_that_never_ends(root: Path) -> None:
    write(root, GUIDE, STEP + "<!-- later\n\n```part\nremove: covers\n```\n")
    assert told(root) == [("fence-not-closed", GUIDE, 11, 1), ("unknown-id", GUIDE, 14, 9)]


def test_an_alias_of_itself(root: Path) -> None:
    write(root, GUIDE, STEP + "```part\nremove: &cover [*cover, *cover]\n```\n")
    assert {rule for rule, *_ in told(root)} <= {"wrong-type", "yaml-not-readable"}


@pytest.mark.parametrize("tag", ["!!python/object/apply:os.system", "!!map", "!Ref", "!<x>"])
def test_a_tag_has_no_meaning(root: Path, tag: str) -> None:
    write(root, GUIDE, STEP + f"```part\nremove: {tag} [cover]\n```\n")
    assert {rule for rule, *_ in told(root)} == {"needs-quotes"}


@pytest.mark.parametrize(
    "text",
    [
        "[" * 15_000,
        "*a **b " * 2_000,
        "`" + "a`` b``` " * 1_500,
        "[a](" * 3_000,
        "![" * 5_000 + "](x)" * 500,
        "> " * 5_000 + "deep",
        "<!--" * 3_000,
        "&#1;" * 3_000,
        "- " * 4_000 + "x",
        "\\" * 15_001,
        "\0\v\f\x1c\x85",
    ],
)
def test_text_that_is_hard_to_take_apart(root: Path, text: str) -> None:
    write(root, GUIDE, STEP + text + "\n\n" + (text + "\n") * 5)
    harmless = {"outside-content", "file-missing", "fence-not-closed"}
    assert {rule for rule, *_ in told(root)} <= harmless


def test_many_headings_and_blocks(root: Path) -> None:
    body = "".join(
        f"## Step {n}\n\n```step\nminutes: {n}\n```\n\nText *{n}*.\n\n" for n in range(5000)
    )
    write(root, GUIDE, STEP + body)
    assert told(root) == []


def test_a_link_to_a_file_outside(root: Path) -> None:
    outside = root.parent / "secret.md"
    outside.write_text("## Nobody's business\n", encoding="utf-8")
    (root / "guides/larch-p2/shared/secret.md").symlink_to(outside)
    write(root, GUIDE, HEAD + "# [Make it safe](shared/secret.md)\n")
    assert told(root) == [
        ("outside-content", GUIDE, 7, 18),
        ("outside-content", "guides/larch-p2/shared/secret.md", 1, 1),
    ]


def test_a_link_to_the_folder_above(root: Path) -> None:
    (root / "guides/larch-p2/shared/up").symlink_to(root.parent)
    (root / "guides/larch-p2/round").symlink_to(root / "guides")
    write(root, GUIDE, HEAD + "# [Make it safe](shared/up/secret.md)\n")
    assert told(root) == [("outside-content", GUIDE, 7, 18)]


def test_links_that_lead_round_and_round(root: Path) -> None:
    for name, other in (("one", "two"), ("two", "one")):
        (root / "guides" / name).mkdir()
        (root / "guides" / name / "on").symlink_to(root / "guides" / other)
    write(root, "guides/one/words.md", "Words\n")
    assert {path for _, path, *_ in told(root)} == {"guides/one/words.md", "guides/two/on/words.md"}


def test_a_stage_in_itself_by_way_of_another(root: Path) -> None:
    for name, other in (("first", "second"), ("second", "first")):
        text = f"---\ndevice: larch-p2\n---\n\n# [On]({other}.md)\n\n## {name}\n"
        write(root, f"guides/larch-p2/shared/{name}.md", text)
    write(root, GUIDE, HEAD + "# [Make it safe](shared/first.md)\n")
    assert told(root) == [("stage-in-itself", "guides/larch-p2/shared/second.md", 5, 8)]


def test_records_based_on_each_other(root: Path) -> None:
    for name, other in (("a", "b"), ("b", "a")):
        (root / f"devices/{name}").mkdir()
        write(
            root,
            f"devices/{name}/device.yaml",
            f"device: {name}\nbased-on: {other}\nname: X\nparts: {{f: F}}\n",
        )
    assert {(rule, path) for rule, path, *_ in told(root)} == {
        ("unknown-id", "devices/a/device.yaml"),
        ("unknown-id", "devices/b/device.yaml"),
    }


def test_hosts_in_a_circle_are_read(root: Path) -> None:
    circle = Path(__file__).parent / "harmless" / "hosts-in-a-circle.yaml"
    shutil.rmtree(root / "guides")
    shutil.rmtree(root / "kits")
    write(root, RECORD, circle.read_bytes())
    assert told(root) == []  # that it can't be so is for a rule to say


def test_a_folder_where_a_file_should_be(root: Path) -> None:
    (root / GUIDE).mkdir()
    (root / "kits/folder.yaml").mkdir()
    assert told(root) == []


def test_a_file_that_may_not_be_read(root: Path) -> None:
    write(root, GUIDE, HEAD)
    (root / GUIDE).chmod(0)
    if os.access(root / GUIDE, os.R_OK):
        pytest.skip("this user may read everything")
    assert told(root) == [("file-missing", GUIDE, 1, 1)]


def test_a_file_with_an_ending_that_nobody_reads(root: Path) -> None:
    (root / "kits/larch-head.yaml").rename(root / "kits/larch-head.yml")
    assert told(root) == [
        ("unknown-id", "guides/larch-p2/replace-the-head.md", 5, 7),
        ("file-missing", "kits/larch-head.yml", 1, 1),
    ]


def test_a_guide_in_a_place_of_its_own(root: Path) -> None:
    (root / "guides/more/of/them").mkdir(parents=True)
    write(root, "guides/more/of/them/guide.md", "Words\n")
    assert told(root) == [("wrong-type", "guides/more/of/them/guide.md", 1, 1)]


def test_no_folder_at_all(tmp_path: Path) -> None:
    content, findings = read_content(tmp_path / "nothing")
    assert (content.guides, findings) == ((), [])


ENDS: dict[str, Callable[[str], str]] = {
    "windows": lambda text: text.replace("\n", "\r\n"),
    "old": lambda text: text.replace("\n", "\r"),
    "mark": lambda text: "\N{ZERO WIDTH NO-BREAK SPACE}" + text,
}


@pytest.mark.parametrize("ends", ["windows", "mark"])
def test_line_ends_and_marks_of_other_systems(root: Path, ends: str) -> None:
    for path in [*root.rglob("*.md"), *root.rglob("*.yaml")]:
        path.write_bytes(ENDS[ends](path.read_text(encoding="utf-8")).encode())
    content, findings = read_content(root)
    assert findings == []
    steps = [step.id for guide in content.guides for step in guide.guide.steps]
    assert steps == ["open-the-battery-plug", "take-the-head-out"]


def test_a_finding_in_a_file_of_windows(root: Path) -> None:
    text = STEP + "```part\nremove: covers\n```\n"
    (root / GUIDE).write_bytes(text.replace("\n", "\r\n").encode())
    assert told(root) == [("unknown-id", GUIDE, 12, 9)]
