"""The cache never changes what a check says: not after any change, not when damaged, not with two at once."""

import pickle
import shutil
from collections.abc import Callable
from pathlib import Path
from random import Random

import pytest

from guidebuild.build import check as checking
from guidebuild.build.cache import digests, kept, store
from guidebuild.build.check import check
from guidebuild.build.result import CheckResult
from guidebuild.reports import json as report_json
from guidebuild.reports.parts.look import Look

LAMP = Path(__file__).parents[1] / "whole" / "projects" / "lamp" / "content"
GUIDES = "guides/brill-7"
RECORD = "devices/brill-7/device.yaml"
SHARED = """\
---
device: brill-7
---

## Pull the mains plug

```power
switch-off: device
```

```connector
disconnect: mains-plug
```
"""


@pytest.fixture
def content(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Two guides, one with a shared stage and a finding; a second record that is based on the first."""
    monkeypatch.setenv("GUIDEBUILD_CACHE", str(tmp_path / "cache"))
    root = tmp_path / "content"
    shutil.copytree(LAMP, root)
    guide = (root / GUIDES / "change-lamp.md").read_text(encoding="utf-8")
    step = SHARED.partition("---\n\n")[2]
    stage = "# Take the lamp out\n\n"
    assert stage + step in guide
    shared = guide.replace(stage + step, f"# [Make it dead](shared/dead.md)\n\n{stage}")
    (root / GUIDES / "shared").mkdir()
    (root / GUIDES / "shared" / "dead.md").write_text(SHARED, encoding="utf-8")
    (root / GUIDES / "look-at-lamp.md").write_text(
        shared.replace("refit: shade\ndo-up: shade-screws", "refit: shade"), encoding="utf-8"
    )
    (root / "devices" / "brill-8").mkdir()
    (root / "devices" / "brill-8" / "device.yaml").write_text(
        "based-on: brill-7\ndevice: brill-8\nname: Brill 8\n", encoding="utf-8"
    )
    (root / "guides" / "brill-8").mkdir()
    (root / "guides" / "brill-8" / "change-lamp.md").write_text(
        guide.replace("device: brill-7", "device: brill-8"), encoding="utf-8"
    )
    return root


def told(result: CheckResult) -> str:
    return report_json.render(result.report(), Look())


def edited(old: str, new: str, path: str) -> Callable[[Path], None]:
    def edit(root: Path) -> None:
        text = (root / path).read_text(encoding="utf-8")
        assert old in text
        (root / path).write_text(text.replace(old, new, 1), encoding="utf-8")

    return edit


def written(path: str, text: str) -> Callable[[Path], None]:
    def write(root: Path) -> None:
        (root / path).parent.mkdir(parents=True, exist_ok=True)
        (root / path).write_text(text, encoding="utf-8")

    return write


CHANGES: dict[str, Callable[[Path], object]] = {
    "a guide": edited("do-up: shade-screws", "do-up: []", f"{GUIDES}/change-lamp.md"),
    "a guide mended": edited(
        "refit: shade", "refit: shade\ndo-up: shade-screws", f"{GUIDES}/look-at-lamp.md"
    ),
    "a shared stage": edited(
        "disconnect: mains-plug", "disconnect: lamp-plug", f"{GUIDES}/shared/dead.md"
    ),
    "a record": edited("holds: shade", "holds: lamp", RECORD),
    "a record that another is based on": edited("live: any, guards: [shade]", "live: any", RECORD),
    "a record that broke": edited("device: brill-7", "device: [", RECORD),
    "the settings": written("guidebuild.yaml", "rules: {fastener-not-returned: off}\n"),
    "the tools": written("tools.yaml", "ph1-driver: {name: Driver, fits: TX9}\n"),
    "a kit": written("kits/unsed.yaml", "kit: unused\nname: A kit\nbrings: lamp\n"),
    "a picture that came": written(f"{GUIDES}/change-lamp/new.svg", "<svg/>"),
    "a guide that came": written(f"{GUIDES}/another.md", "---\ntitle: A\n---\n"),
    "a guide that went": lambda root: (root / GUIDES / "change-lamp.md").unlink(),
    "a guide that is no text": lambda root: (root / GUIDES / "change-lamp.md").write_bytes(
        b"\xff\xfe"
    ),
}


@pytest.mark.parametrize("change", CHANGES.values(), ids=CHANGES)
def test_after_any_change_the_check_says_what_it_says_without_a_cache(
    content: Path, change: Callable[[Path], object]
) -> None:
    assert told(check(content, jobs=1)) == told(check(content, jobs=1, cache=False))
    change(content)
    assert told(check(content, jobs=1)) == told(check(content, jobs=1, cache=False))
    assert told(check(content, jobs=1)) == told(check(content, jobs=1, cache=False))
    assert told(check(content, GUIDES, jobs=1)) == told(check(content, GUIDES, jobs=1, cache=False))


def worked_out(content: Path, monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The guides that a check works out anew."""
    fresh: list[str] = []
    real = checking._fresh

    def watched(task: object, paths: list[str], *rest: object) -> object:
        fresh.extend(paths)
        return real(task, paths, *rest)  # type: ignore[arg-type]

    with monkeypatch.context() as patch:
        patch.setattr(checking, "_fresh", watched)
        check(content, jobs=1)
    return fresh


def test_only_what_changed_is_worked_out(content: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    check(content, jobs=1)
    assert worked_out(content, monkeypatch) == []
    CHANGES["a guide"](content)
    assert worked_out(content, monkeypatch) == [f"{GUIDES}/change-lamp.md"]
    CHANGES["a shared stage"](content)
    assert worked_out(content, monkeypatch) == [f"{GUIDES}/look-at-lamp.md"]
    assert worked_out(content, monkeypatch) == []


def test_a_file_s_date_says_nothing(content: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    check(content, jobs=1)
    for path in content.rglob("*.*"):
        path.touch()
    assert worked_out(content, monkeypatch) == []


def test_another_guidebuild_trusts_no_cache_of_this_one(
    content: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    check(content, jobs=1)
    monkeypatch.setattr(digests, "tool", lambda: b"another")
    assert len(worked_out(content, monkeypatch)) == 3


def test_a_random_walk_of_changes(content: Path) -> None:
    random = Random(7)
    for _ in range(12):
        path = random.choice(sorted(content.rglob("*.md")) + sorted(content.rglob("*.yaml")))
        lines = path.read_text(encoding="utf-8", errors="replace").splitlines(keepends=True)
        if lines:
            at = random.randrange(len(lines))
            lines[at : at + 1] = random.choice([[], [lines[at]] * 2, [lines[at].upper()]])
        path.write_text("".join(lines), encoding="utf-8")
        assert told(check(content, jobs=1)) == told(check(content, jobs=1, cache=False))


@pytest.mark.parametrize("how", ["cut", "flipped", "empty", "folder", "other"])
def test_a_damaged_cache_is_none(content: Path, how: str) -> None:
    right = told(check(content, jobs=1))
    file = store.file_of(content)
    data = file.read_bytes()
    match how:
        case "cut":
            file.write_bytes(data[: len(data) // 2])
        case "flipped":
            file.write_bytes(data[:-9] + bytes([data[-9] ^ 1]) + data[-8:])
        case "empty":
            file.write_bytes(b"")
        case "folder":
            file.unlink()
            file.mkdir()
        case _:
            store.save(file, {"guides": {"x": 3}, "rest": [1], "result": (b"a", 2)})
    assert told(check(content, jobs=1)) == right


class Harmful:
    """What somebody might put into a cache."""

    def __reduce__(self) -> tuple[object, tuple[str, ...]]:
        import os

        return os.system, ("touch harm",)


def test_nothing_in_a_cache_can_run(
    content: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    file = store.file_of(content)
    store.save(file, {"guides": Harmful()})
    assert store.load(file) == {}
    with pytest.raises(pickle.UnpicklingError, match="is not read from a cache"):
        kept.from_bytes(pickle.dumps(Harmful()), lambda path: None)
    assert not (tmp_path / "harm").exists()


def test_a_cache_that_can_t_be_written_is_no_mistake(
    content: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (content.parent / "file").write_text("in the way")
    monkeypatch.setenv("GUIDEBUILD_CACHE", str(content.parent / "file" / "cache"))
    assert told(check(content, jobs=1)) == told(check(content, jobs=1, cache=False))


def test_two_checks_at_once_leave_a_sound_cache(content: Path) -> None:
    from concurrent.futures import ThreadPoolExecutor

    right = told(check(content, jobs=1, cache=False))
    with ThreadPoolExecutor(4) as pool:
        said = list(pool.map(lambda _: told(check(content, jobs=1)), range(4)))
    assert set(said) == {right}
    assert store.load(store.file_of(content))


def test_without_a_cache_nothing_is_remembered(content: Path) -> None:
    check(content, jobs=1, cache=False)
    assert not store.folder().exists()
