"""A cache that somebody has been at: nothing in it runs, and what does not fit is as good as not there."""

import os
import pickle
from pathlib import Path

import pytest

from guidebuild.build.cache import kept, store


class _Runs:
    """What a pickle may ask Python to do when it is read."""

    def __init__(self, made: Path) -> None:
        self.made = made

    def __reduce__(self) -> tuple[object, tuple[str, ...]]:
        return os.mkdir, (str(self.made),)


def test_a_pickle_that_would_run_something_is_not_read(tmp_path: Path) -> None:
    data = pickle.dumps(_Runs(tmp_path / "ran"))
    with pytest.raises(pickle.UnpicklingError):
        kept.from_bytes(data, lambda path: "")
    assert not (tmp_path / "ran").exists()


def test_a_file_with_a_right_checksum_runs_nothing_either(tmp_path: Path) -> None:
    file = tmp_path / "one.cache"
    store.save(file, {"guides": _Runs(tmp_path / "ran")})
    assert file.exists()
    assert store.load(file) == {}
    assert not (tmp_path / "ran").exists()


def test_every_flipped_bit_makes_it_as_good_as_not_there(tmp_path: Path) -> None:
    file = tmp_path / "one.cache"
    store.save(file, {"rest": (b"a", b"b")})
    sound = file.read_bytes()
    assert store.load(file) == {"rest": (b"a", b"b")}
    for at in range(len(sound)):
        file.write_bytes(sound[:at] + bytes([sound[at] ^ 1]) + sound[at + 1 :])
        assert store.load(file) == {}
