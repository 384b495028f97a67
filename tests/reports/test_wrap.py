"""Words set to a width, and an author's line with its span in sight."""

from hypothesis import given
from hypothesis import strategies as st

from guidebuild.reports.parts.quote import parts, visible, window
from guidebuild.reports.parts.wrap import columns, wrap
from guidebuild.source.span import Span
from guidebuild.source.text import Source

words = st.text(st.characters(exclude_categories=["Cc", "Cs"]), max_size=60)


def test_a_wide_character_takes_two_columns_and_a_combining_one_none() -> None:
    # Source: Unicode Standard Annex 11, East Asian Width: Wide and Fullwidth take two cells.
    assert columns("ネジ") == 4
    assert columns("Ａ") == 2
    assert columns("e\N{COMBINING ACUTE ACCENT}") == 1
    assert columns("مسمار") == 5


def test_lines_break_between_words() -> None:
    assert wrap("Put the screw back first.", 10) == ["Put the", "screw back", "first."]


def test_a_script_without_spaces_is_cut_at_the_width() -> None:
    assert wrap("ネジを戻してください", 8) == ["ネジを戻", "してくだ", "さい"]


def test_a_long_path_is_not_cut_so_that_it_can_be_copied() -> None:
    path = "content/guides/brill-7/change-lamp.md"
    assert wrap(f"see {path}", 12) == ["see", path]


@given(words, st.integers(2, 40))
def test_wrapping_loses_nothing_and_keeps_to_the_width(text: str, width: int) -> None:
    lines = wrap(text, width)
    assert "".join("".join(lines).split()) == "".join(text.split())
    assert all(columns(line) <= width for line in lines if not line.isascii())


@given(words, words, words, st.integers(1, 120))
def test_the_start_of_the_span_is_always_in_sight(
    before: str, inside: str, after: str, width: int
) -> None:
    text = f"{before}{inside}{after}".replace("\n", " ")
    span = Span(Source("a.md", text), len(before), len(before) + len(inside))
    shown = window(span, width)
    assert columns("".join(shown)) <= max(width, 24)
    assert parts(span)[1].startswith(shown[1].rstrip("…"))


def test_a_line_that_fits_is_shown_whole() -> None:
    source = Source("a.md", "  undo: [a, b]  \nnext")
    assert window(Span(source, 9, 10), 40) == ("undo: [", "a", ", b]")


def test_of_a_span_over_several_lines_the_first_is_shown() -> None:
    source = Source("a.md", "one two\nthree")
    assert window(Span(source, 4, 13), 40) == ("one ", "two", "")


def test_what_could_steer_a_terminal_is_made_visible() -> None:
    assert visible("a\x1b[2Jb\x07\N{RIGHT-TO-LEFT OVERRIDE}c\x9b") == "a�[2Jb��c�"
