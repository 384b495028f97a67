"""Captions: limits in each language, the budget told before, SubRip read, chapters, and times that no translator moves.

Source of the limits: BBC Subtitle Guidelines and the code of a public subtitle editor (reference on localisation).
"""

import shutil
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebuild.build.bring_back import bring_back
from guidebuild.build.captions import captioned
from guidebuild.build.translations import translation
from guidebuild.guide.guide import Guide
from guidebuild.read.content import read_content
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.captions.budget import with_budget
from guidebuild.translate.captions.chapters import chapters
from guidebuild.translate.captions.coded import coded_cue, cue_text
from guidebuild.translate.captions.limits import limits
from guidebuild.translate.captions.measure import length, lines
from guidebuild.translate.captions.srt import read_srt
from guidebuild.translate.captions.walk import caption_segments, caption_texts
from guidebuild.translate.checks import caption_overlaps, caption_too_fast, caption_too_long
from guidebuild.translate.segments.slots import Slots
from guidebuild.translate.webvtt.cue import Captions, Cue
from guidebuild.translate.webvtt.reader import read_webvtt
from guidebuild.translate.webvtt.writer import write_webvtt
from tests import needs

CONTENT = Path(__file__).resolve().parents[2] / "content"
HEAD = "guides/larch-p2/replace-the-print-head"
FILM = f"{HEAD}/free-the-head-flex.mp4"
NOWHERE = Span(Source("film.vtt", ""), 0, 0)


@pytest.mark.parametrize(
    ("language", "speed", "line", "shortest"),
    [
        ("en", 15, 42, 833),  # Latin scripts: 15 where the editor has 17, for technical items
        ("de", 15, 42, 833),
        ("ru", 17, 42, 833),
        ("ar", 20, 42, 833),
        ("hi", 22, 42, 833),
        ("ko", 12, 16, 833),
        ("zh-Hans", 9, 16, 833),
        ("ja", 4, 23, 500),
        ("th", 17, 35, 833),
    ],
)
def test_the_limits_of_a_language(language: str, speed: int, line: int, shortest: int) -> None:
    bounds = limits(language)
    assert (bounds.speed, bounds.line, bounds.shortest) == (speed, line, shortest)
    assert (bounds.lines, bounds.longest) == (2, 7000)


@pytest.mark.parametrize(
    ("text", "language", "count"),
    [
        ("Lift it.", "en", 8),
        ("<b>Lift</b> &lt;it&gt;", "en", 9),
        ("شُدّ", "ar", 2),  # two letters, each with a mark
        ("ねじ4本", "ja", 3.5),
        ("e\u0301", "fr", 1),
    ],
)
def test_characters_are_counted_as_a_reader_meets_them(
    text: str, language: str, count: float
) -> None:
    assert length(" ".join(lines(Cue("", 0, 1, text))), language) == count


@pytest.mark.parametrize(
    ("language", "text", "milliseconds", "fast"),
    [
        ("en", "x" * 30, 2000, False),
        ("en", "x" * 31, 2000, True),
        ("ar", "م" * 40, 2000, False),
        ("ar", "م" * 41, 2000, True),
        ("ja", "締" * 8, 2000, False),
        ("ja", "締" * 9, 2000, True),
        ("en", "a b c d e f", 2000, False),  # 180 words a minute
        ("en", "a b c d e f g", 2000, True),
        ("ja", "締" * 2, 500, False),
        ("ja", "締" * 2, 499, True),
        ("en", "Now", 832, True),
    ],
)
def test_too_fast_is_where_the_guideline_says(
    language: str, text: str, milliseconds: int, fast: bool
) -> None:
    found = list(caption_too_fast.check_captions([Cue("", 0, milliseconds, text)], language))
    assert bool(found) == fast


def test_too_long_and_overlapping() -> None:
    long = [
        Cue("", 0, 7000, f"{'x' * 42}\n{'x' * 42}"),
        Cue("", 0, 7001, "x"),
        Cue("", 0, 1, "x" * 43),
    ]
    assert [slip.cue for slip in caption_too_long.check_captions(long, "en")] == [1, 2]
    times = [(0, 1000), (1000, 2000), (2040, 3000), (3080, 4000), (3999, 5000)]
    cues = [Cue("", start, end, "x") for start, end in times]
    assert [slip.cue for slip in caption_overlaps.check_captions(cues, "en")] == [2, 4]


def test_a_translator_is_told_the_budget_before() -> None:
    cues = (Cue("1", 0, 2700, "Lift it."), Cue("2", 3500, 5000, "Turn it."))
    first, second = caption_segments(Captions("", (), (), cues), Source("film.vtt", ""))
    assert with_budget(first, "de").notes == (
        "caption of 2.7 s: at most 40 characters, 42 in each of 2 lines; 0.8 s without a caption follow",
    )
    assert with_budget(second, "ja").notes == (
        "caption of 1.5 s: at most 6 characters, 23 in each of 2 lines",
    )


SRT = """\
1
00:00:01,000 --> 00:00:02,500
<i>Lift</i> the {\\an8}plate
& hold it < 5 s

2
00:01:00.5 --> 00:01:02.000
<font color="red">Turn it.</font>
"""


def test_subrip_is_read() -> None:
    captions, faults = read_srt(SRT.replace("\n", "\r\n"))
    assert faults == []
    assert captions.cues == (
        Cue("1", 1000, 2500, "<i>Lift</i> the plate\n&amp; hold it &lt; 5 s"),
        Cue("2", 60_500, 62_000, "Turn it."),
    )
    assert read_webvtt(write_webvtt(captions)) == captions


def test_subrip_against_another_reader() -> None:
    """Source: pysubs2, which reads SubRip by its own rules."""
    pysubs2 = needs.library("pysubs2")
    theirs = pysubs2.SSAFile.from_string(SRT, format_="srt")
    ours = read_srt(SRT)[0].cues
    assert [(cue.start, cue.end) for cue in ours] == [(one.start, one.end) for one in theirs]


@given(st.text(alphabet="0123456789:,.-> <>ab\n{}\\&", max_size=200))
def test_any_text_is_read_as_subrip_without_falling_over(text: str) -> None:
    captions, faults = read_srt(text)
    assert all(fault.line >= 1 for fault in faults)
    assert read_webvtt(write_webvtt(captions)) is not None


@pytest.mark.parametrize(
    ("text", "coded"),
    [
        ("Lift <b>it</b> now", "Lift <1>it</1> now"),
        ("<v Anna>Turn &amp; hold", "<1>Turn &amp; hold</1>"),
        ("<i>a <b>c</b></i>", "<1>a <2>c</2></1>"),
        ("3 &lt; 4", "3 &lt; 4"),
    ],
)
def test_tags_are_codes_and_come_back(text: str, coded: str) -> None:
    found = coded_cue(text)
    assert found.text == coded
    again = cue_text(coded, found.codes, NOWHERE)
    assert again is not None
    assert coded_cue(again) == found


def test_times_stay_whatever_is_said() -> None:
    captions = Captions("", (), (), (Cue("1", 0, 900, "a <b>b</b>"), Cue("2", 900, 1800, "c")))
    told = caption_texts(captions, Source("f.vtt", ""), Slots(lambda segment: f"T {segment.text}"))
    assert [cue.text for cue in told.cues] == ["T a <b>b</b>", "T c"]
    assert [(cue.start, cue.end) for cue in told.cues] == [(0, 900), (900, 1800)]


@pytest.fixture
def content(tmp_path: Path) -> Path:
    return Path(shutil.copytree(CONTENT, tmp_path / "content"))


def back(root: Path, name: str, text: str) -> tuple[bool, list[str]]:
    path = root.parent / name
    path.write_text(text, encoding="utf-8")
    returned = bring_back(root, read_content(root)[0], path)
    return returned.refused, [f"{one.rule} {one.span.line}" for one in returned.findings]


def test_captions_come_back_as_captions(content: Path) -> None:
    german = translation(content, read_content(content)[0], "de", []).content.captions[FILM]
    new = german.replace("hochstellen", "aufstellen")
    assert new != german
    assert back(content, "free-the-head-flex.de.vtt", new) == (False, [])
    assert translation(content, read_content(content)[0], "de", []).content.captions[FILM] == new


@pytest.mark.parametrize(
    ("old", "new", "line"),
    [("00:00:07.000 --> 00:00:09.700", "00:00:07.500 --> 00:00:09.700", 14), ("\n4\n", "\n4 ", 14)],
)
def test_a_caption_that_was_moved_or_lost_refuses_the_file(
    content: Path, old: str, new: str, line: int
) -> None:
    german = translation(content, read_content(content)[0], "de", []).content.captions[FILM]
    assert old in german
    refused, told = back(content, "free-the-head-flex.de.vtt", german.replace(old, new, 1))
    assert refused
    assert told[0].startswith("caption-timing-changed")


def test_captions_of_no_film_of_ours_are_refused(content: Path) -> None:
    assert back(content, "other.de.vtt", "WEBVTT\n")[0]
    assert back(content, "free-the-head-flex.de.vtt", "no captions") == (
        True,
        ["captions-not-readable 1"],
    )


def guide() -> Guide:
    return next(
        one.guide for one in read_content(CONTENT)[0].guides if one.guide.path == f"{HEAD}.md"
    )


def test_chapters_are_the_steps_that_show_the_film() -> None:
    found = chapters(guide(), "free-the-head-flex.mp4")
    assert found is not None
    assert [(cue.start, cue.end, cue.text) for cue in found.cues] == [
        (0, 7000, "Open the plugs of the head"),
        (7000, 12_000, "Connect the head"),
    ]
    assert chapters(guide(), "another.mp4") is None


def test_the_films_captions_are_there_in_three_languages() -> None:
    content = read_content(CONTENT)[0]
    (film,) = captioned(content)
    assert film.film == FILM
    source = film.captions.cues
    for language in ("de", "ar"):
        told = read_webvtt(translation(CONTENT, content, language, []).content.captions[FILM])
        assert told is not None
        assert [(cue.start, cue.end) for cue in told.cues] == [
            (cue.start, cue.end) for cue in source
        ]
        assert all(new.text != old.text for new, old in zip(told.cues, source, strict=True))
    assert (CONTENT / FILM).stat().st_size < 300_000
    assert Decimal(source[-1].end) / 1000 <= Decimal("12.5")
