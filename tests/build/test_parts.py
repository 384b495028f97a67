"""Parts that do not fit together, or that somebody has been at, are told before anything is written."""

import json
import pickle
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from guidebuild.build.parts.join import join
from guidebuild.build.parts.make import Wanted, make_part
from guidebuild.build.parts.packing import packed, unpacked
from guidebuild.build.parts.part import FOUND, HEAD
from guidebuild.build.parts.share import Share, share
from guidebuild.build.trouble import Trouble
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from tests.bench.many_guides import write


@pytest.mark.parametrize("of", [1, 2, 3, 7, 12])
@pytest.mark.parametrize("count", [0, 1, 6, 7, 100])
def test_every_guide_is_in_one_part_and_in_order(of: int, count: int) -> None:
    paths = [f"{number:03}" for number in range(count)]
    parts = [Share(number, of).mine(paths) for number in range(1, of + 1)]
    assert [path for part in parts for path in part] == paths
    assert max(map(len, parts)) - min(map(len, parts)) <= 1


@pytest.mark.parametrize(
    "words", ["", "1", "0/3", "4/3", "1/0", "-1/3", "1/3/5", "a/b", "1.5/2", "¹/3"]
)
def test_what_is_no_part(words: str) -> None:
    with pytest.raises(Trouble, match="is no part"):
        share(words)


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Two parts of a built folder of guides, and the first of another one."""
    room = tmp_path_factory.mktemp("parts")
    write(room / "content", 4, 4)
    write(room / "other", 2, 4)
    for number in (1, 2):
        make_part(room / "content", Wanted(Share(number, 2), room / f"p{number}", pages=True))
    make_part(room / "other", Wanted(Share(1, 2), room / "o1", pages=True))
    make_part(room / "content", Wanted(Share(1, 3), room / "t1", pages=True))
    make_part(room / "content", Wanted(Share(1, 2), room / "c1"))
    return room


@pytest.mark.parametrize(
    ("parts", "told"),
    [
        (["p1"], "Part 2 of 2 is missing"),
        (["p1", "p1"], "are the same part"),
        (["p1", "p2", "p2"], "are the same part"),
        (["p1", "t1"], "is one of 2 parts"),
        (["o1", "p2"], "the same content"),
        (["c1", "p2"], "holds no pages"),
        (["p1", "content"], "is no part"),
        (["p1", "nowhere"], "is no part"),
    ],
)
def test_parts_that_do_not_fit(made: Path, tmp_path: Path, parts: list[str], told: str) -> None:
    with pytest.raises(Trouble, match=told):
        join([made / part for part in parts], tmp_path / "site")
    assert not (tmp_path / "site").exists()


def _page(folder: Path) -> Path:
    return min(folder.glob("site/en/*/*.html"))


def _head(change: Callable[[dict[str, object]], object]) -> Callable[[Path], object]:
    def spoil(folder: Path) -> None:
        head = json.loads((folder / HEAD).read_bytes())
        change(head)
        (folder / HEAD).write_text(json.dumps(head), encoding="utf-8")

    return spoil


_SPOILT: dict[str, Callable[[Path], object]] = {
    "a page flipped": lambda folder: _page(folder).write_bytes(b"x" + _page(folder).read_bytes()[1:]),
    "a page lost": lambda folder: _page(folder).unlink(),
    "findings cut short": lambda folder: (folder / FOUND).write_bytes((folder / FOUND).read_bytes()[:-9]),
    "findings lost": lambda folder: (folder / FOUND).unlink(),
    "no head": lambda folder: (folder / HEAD).write_bytes(b""),
    "a head without end": lambda folder: (folder / HEAD).write_bytes(b"[" * 100_000),
    "a head of another kind": lambda folder: (folder / HEAD).write_bytes(b"[1, 2]"),
    "a page outside": _head(lambda head: head.update(pages={"../../x": "0" * 64})),
    "pages of another kind": _head(lambda head: head.update(pages=[1])),
    "no number": _head(lambda head: head.pop("part")),
    "a number of another kind": _head(lambda head: head.update(part=7)),
}  # fmt: skip


@pytest.mark.parametrize("how", _SPOILT)
def test_a_part_that_somebody_has_been_at(made: Path, tmp_path: Path, how: str) -> None:
    part = Path(shutil.copytree(made / "p2", tmp_path / "p2"))
    _SPOILT[how](part)
    with pytest.raises(Trouble, match=r"Make (it|this part) again|is no part"):
        join([made / "p1", part], tmp_path / "site")
    assert not (tmp_path / "site").exists()
    assert not list(tmp_path.glob("*guidebuild*"))


def test_nothing_runs_that_stands_in_a_part(made: Path, tmp_path: Path) -> None:
    """As a pickle could: what it names is not made, whoever wrote the sums anew."""
    import hashlib

    class Evil:
        def __reduce__(self) -> tuple[Callable[[str], int], tuple[str]]:
            import os

            return os.system, (f"touch {tmp_path}/ran",)

    part = Path(shutil.copytree(made / "p2", tmp_path / "p2"))
    data = pickle.dumps(([], pickle.dumps(Evil())))
    (part / FOUND).write_bytes(data)
    _head(lambda head: head.update(found=hashlib.sha256(data).hexdigest()))(part)
    with pytest.raises(Trouble, match="damaged"):
        join([made / "p1", part], None)
    assert not (tmp_path / "ran").exists()


@pytest.mark.parametrize("bomb", [b"]r\xff\xff\xff\x7f.", b"\x8e\0\0\0\0\x10\0\0\0x.", b"\x97."])
def test_a_few_bytes_do_not_take_gigabytes(bomb: bytes) -> None:
    """A memo's place by number, a length that is not there: a pickle of ours is never written so."""
    for data in (b"\x80\x05" + bomb, packed([])[:2] + pickle.dumps(([], b"\x80\x05" + bomb))[2:]):
        with pytest.raises((pickle.UnpicklingError, ValueError), match=r"is not read|expected"):
            unpacked(data)


def test_texts_go_along_with_what_stands_in_them() -> None:
    one, other = Source("a.md", "words"), Source("a.md", "")
    again = unpacked(packed([Span(one, 0, 5), Span(other, 0, 0), Span(one, 1, 2)]))
    assert [span.source.text for span in again] == ["words", "", "words"]
    assert again[0].source is again[2].source
