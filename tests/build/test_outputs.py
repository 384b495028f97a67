"""Outputs' files put together into one site."""

import pytest

from guidebuild.build.outputs import merged, safe


def test_files_of_several_outputs_stand_side_by_side() -> None:
    assert merged([("a", {"x": b"1"}), ("b", {"y": b"2"})]) == {"x": b"1", "y": b"2"}


def test_two_outputs_may_write_the_same_bytes_but_not_others() -> None:
    assert merged([("a", {"x": b"1"}), ("b", {"x": b"1"})]) == {"x": b"1"}
    with pytest.raises(ValueError, match="as another does"):
        merged([("a", {"x": b"1"}), ("b", {"x": b"2"})])


@pytest.mark.parametrize("path", ["/etc/passwd", "../x", "a/../../x", ""])
def test_no_output_writes_outside_of_the_site(path: str) -> None:
    assert not safe(path)
    with pytest.raises(ValueError, match="outside of the site"):
        merged([("a", {path: b""})])
