"""What holds for the reports that people read, whatever the findings."""

from collections.abc import Callable

import pytest

from guidebuild.reports import plain, terminal
from guidebuild.reports.parts import words
from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.report import Report
from guidebuild.reports.parts.slip import Slip
from guidebuild.reports.parts.wrap import columns
from guidebuild.source.finding import Category, Finding, Loudness, Told
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from tests.reports.sample import REPORT

Render = Callable[[Report, Look], str]


@pytest.mark.parametrize("width", [40, 60, 80, 100])
def test_no_line_is_wider_than_the_terminal(width: int) -> None:
    lines = terminal.render(REPORT, Look(width)).splitlines()
    too_wide = [line for line in lines if columns(line) > width]
    assert all(" " not in line[9:] for line in too_wide), "only an uncut path may be wider"


def test_no_colour_leaves_no_escape_character() -> None:
    assert "\x1b" not in terminal.render(REPORT, Look(80, colour=False))
    assert "\x1b" in terminal.render(REPORT, Look(80, colour=True))


def test_colour_says_nothing_that_is_not_said_without_it() -> None:
    import re

    painted = terminal.render(REPORT, Look(80, colour=True))
    assert re.sub(r"\x1b\[[\d;]*m", "", painted) == terminal.render(REPORT, Look(80))


def test_ascii_is_ascii_but_for_the_author_s_own_words() -> None:
    shown = terminal.render(REPORT, Look(80, unicode=False))
    assert {char for char in shown if not char.isascii()} == set("“ß”")


@pytest.mark.parametrize("render", [terminal.render, plain.render])
def test_an_author_can_t_steer_the_reader_s_terminal(render: Render) -> None:
    source = Source("guides/x\x1b[2J.md", "remove: \x1b]0;gotcha\x07\n")
    finding = Finding(
        "unknown-id", Category.CORRECTNESS, Span(source, 8, 10), "no \x1b[31m", "\x07"
    )
    shown = render(Report("0", (Slip(finding, Loudness.ERROR, (), "", "a", "\x1b[1m"),)), Look(80))
    assert "\x1b" not in shown
    assert "\x07" not in shown


@pytest.mark.parametrize(
    ("told", "said"),
    [
        (None, ""),
        (Told("", 4, 4), ""),
        (Told("only when a = b", 1, 4), "only when a = b (1 of 4 configurations)"),
        (Told("except when a = b", 3, 4), "except when a = b (3 of 4 configurations)"),
    ],
)
def test_configurations_are_told_where_they_matter(told: Told | None, said: str) -> None:
    assert words.units(told) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("the screw is out", "The screw is out."),
        ("the screw is out.", "The screw is out."),
        ("plate-screws.a is out", "plate-screws.a is out."),
        ("`x` is no id", "`x` is no id."),
        ("", ""),
    ],
)
def test_a_message_becomes_a_sentence(text: str, said: str) -> None:
    assert words.sentence(text) == said
