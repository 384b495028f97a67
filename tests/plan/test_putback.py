"""The way back of the taken-apart half of each demo guide: the proof passes in every configuration."""

from pathlib import Path

import pytest

from guidebuild.build.check import check
from guidebuild.build.place import asked
from guidebuild.build.putting_back import put_back
from guidebuild.build.trouble import Trouble
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content
from guidebuild.source.finding import Category
from tests.plan.drafted import copied

# Where the second half begins, and the remedies that belong to the first.
HALVES = {
    "larch-p2/replace-the-print-head.md": ("## Fit the gap sensor to the new head", None),
    "larch-p2/replace-the-battery.md": ("## Stick the new pack in", None),
    "brindle-e4/replace-the-control-board.md": (
        "## Lay the board on its pad",
        ("# The capacitor is still charged", "# The panel is not connected"),
    ),
}


def half(text: str, cut: str, remedy: tuple[str, str] | None) -> str:
    first = text[: text.index(cut)]
    return first if remedy is None else first + text[text.index(remedy[0]) : text.index(remedy[1])]


@pytest.mark.parametrize("guide", HALVES)
def test_the_second_half_puts_everything_back_and_tries_it(guide: str, tmp_path: Path) -> None:
    root = copied(tmp_path)
    file = root / "guides" / guide
    text = file.read_text(encoding="utf-8")
    first = half(text, *HALVES[guide])
    file.write_text(first, encoding="utf-8")
    begun = asked(file)
    assert _open_at_the_end(root, guide), "the half leaves nothing open: it proves nothing"
    whole = put_back(begun)
    assert whole.startswith(first.rstrip("\n"))
    file.write_text(whole, encoding="utf-8")
    result = check(root, f"guides/{guide}", cache=False)
    assert not result.faults
    assert not [
        f"{one.span.line}: {one.rule}: {one.message}"
        for one in result.findings
        if one.category is not Category.TRANSLATION
    ]
    assert not _open_at_the_end(root, guide)
    assert _end(root, guide) == _end_of(text, root, guide)


def _open_at_the_end(root: Path, guide: str) -> bool:
    content, _ = read_content(root, [f"guides/{guide}"])
    (read,) = content.guides
    return bool(prove(read.guide, read.device).endings)


def _end(root: Path, guide: str) -> dict[str, tuple[tuple[int, int], ...]]:
    """How everything that has a wanted state stands at the end; power and what fills itself are free."""
    content, _ = read_content(root, [f"guides/{guide}"])
    (read,) = content.guides
    proof = prove(read.guide, read.device)
    free = {store.key for store in read.device.stores if store.filled_by} | {"device"}
    return {
        key: tuple((int(state), bits) for state, bits in proof.end.cells(key))
        for key in read.device.things
        if key not in free
    }


def _end_of(text: str, root: Path, guide: str) -> dict[str, tuple[tuple[int, int], ...]]:
    (root / "guides" / guide).write_text(text, encoding="utf-8")
    return _end(root, guide)


def test_a_guide_that_leaves_nothing_open_is_told_so(tmp_path: Path) -> None:
    root = copied(tmp_path)
    with pytest.raises(Trouble, match="nothing to put back"):
        put_back(asked(root / "guides/larch-p2/replace-the-battery.md"))
