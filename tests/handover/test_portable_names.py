"""Names that would not arrive on a stick are named before anything is written.

Source: Microsoft, "Naming Files, Paths, and Namespaces"; the lengths are our own.
"""

import pytest

from guidebuild.source.portable import bad_names


def test_the_names_that_we_give_all_arrive() -> None:
    ours = ["START.html", "SHA256SUMS", "larch-p2/replace-the-print-head.html", "sheet/sheet.css"]
    assert bad_names(dict.fromkeys(ours, 10)) == []


@pytest.mark.parametrize(
    ("path", "word"),
    [
        ("con.html", "device on Windows"),
        ("guides/nul", "device on Windows"),
        ("lpt1.svg", "device on Windows"),
        ("what?.html", "refuses"),
        ("a:b.html", "refuses"),
        ("trailing.", "dot or a space"),
        ("Torque.html", "a-z"),
        ("größe.html", "a-z"),
        ("a.tar.gz", "more than one dot"),
        ("x" * 65, "a-z"),
        ("a/" * 61 + "b", "characters"),
        ("a/b/c/d/e/f/g", "deep"),
    ],
)
def test_a_name_that_does_not_arrive_is_refused(path: str, word: str) -> None:
    assert any(one.path == path and word in one.why for one in bad_names({path: 1}))


@pytest.mark.parametrize(
    "twins",
    [
        ("a/torque.html", "a/Torque.html"),
        ("a", "A/b"),
        ("stra\u00dfe", "strasse"),
        ("e\u0301", "\u00e9"),
    ],
)
def test_names_that_fat_takes_for_one_are_refused(twins: tuple[str, str]) -> None:
    assert any("can't tell" in one.why for one in bad_names(dict.fromkeys(twins, 1)))


def test_a_file_larger_than_fat_takes_and_a_crowded_folder_are_refused() -> None:
    assert "4294967295" in bad_names({"film.webm": 2**32})[0].why
    assert "2001 files" in bad_names({f"a/{number}": 1 for number in range(2001)})[0].why
