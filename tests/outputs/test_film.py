"""Films on the page: the piece of each step, its captions in every language, and what stands for it on paper."""

import re
from dataclasses import replace
from functools import cache
from urllib.parse import unquote

import pytest

from guidebuild.build.pictures import with_pictures
from guidebuild.outputs.html.edition import Edition
from guidebuild.outputs.html.films import Films, film_files, films_of
from guidebuild.outputs.html.page.film import FilmView, clock, film_views
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.read.content import read_content
from guidebuild.translate.webvtt.reader import read_webvtt
from tests.outputs.demo import CONTENT, HEAD, load, readings

FILM = "guides/larch-p2/replace-the-print-head/free-the-head-flex.mp4"
OPEN, CONNECT = "open-the-plugs-of-the-head", "connect-the-head"


@cache
def films() -> Films:
    """Those of the demo, with captions in two languages."""
    content = with_pictures(CONTENT, read_content(CONTENT)[0])
    proof = readings()[HEAD].proof
    german = replace(content, captions={FILM: "WEBVTT\n\n00:00.000 --> 00:02.000\nKlappe hoch.\n"})
    editions = (Edition("en", content, (proof,)), Edition("de", german, (proof,)))
    return films_of((proof,), load, editions)


def reading() -> Reading:
    """The demo's guide with its films, for a page two folders deep."""
    return replace(readings()[HEAD], films=films(), root="../../")


def film(step: str) -> FilmView:
    """The one film of a step."""
    one = reading()
    passage = one.passages[step]
    (view,) = film_views(one, passage.step, passage.shown)
    return view


def test_a_piece_plays_from_its_time_to_its_end() -> None:
    """W3C Media Fragments URI 1.0, 4.2.1: `#t=start,end` in seconds."""
    site = "../../films/larch-p2/replace-the-print-head/free-the-head-flex.mp4"
    assert film(OPEN).src == f"{site}#t=0,7"
    assert film(CONNECT).src == f"{site}#t=7,12"
    assert (film(OPEN).width, film(OPEN).height, film(OPEN).type) == (640, 360, "video/mp4")


def test_captions_are_data_in_every_language_the_reader_s_own_first() -> None:
    tracks = film(OPEN).tracks
    assert [(one.kind, one.language, one.label) for one in tracks[:2]] == [
        ("captions", "en", "English"),
        ("subtitles", "de", "Deutsch"),
    ]
    for track in tracks:
        assert track.src.startswith("data:text/vtt;charset=utf-8,WEBVTT")
        read = read_webvtt(unquote(track.src.partition(",")[2]))
        assert read is not None and read.cues


def test_the_chapters_are_the_steps_that_show_the_film() -> None:
    chapters = film(OPEN).tracks[-1]
    read = read_webvtt(unquote(chapters.src.partition(",")[2]))
    assert chapters.kind == "chapters" and read is not None
    said = [(one.start, one.end, one.text) for one in read.cues]
    assert said == [(0, 7000, "Open the plugs of the head"), (7000, 12000, "Connect the head")]


def test_what_is_said_can_be_read_and_gone_to() -> None:
    """The captions that begin in this piece, not those of the next step."""
    assert [(one.at, one.clock, one.words) for one in film(OPEN).said] == [
        ("0", "0:00", "Turn the dark flap up with the spudger."),
        ("3.2", "0:03", "Draw the flex out straight, along the board."),
    ]
    (other,) = film(OPEN).others
    assert other.at == "7" and other.step == (CONNECT, reading().numbers.steps[CONNECT])


def test_each_piece_has_its_own_still_where_one_lies_there() -> None:
    assert re.search(r"free-the-head-flex-\d+\.jpg$", film(OPEN).poster)
    assert re.search(r"free-the-head-flex-7s-\d+\.jpg$", film(CONNECT).poster)
    files = dict(film_files(films()))
    assert {film(OPEN).poster[6:], film(CONNECT).poster[6:], film(OPEN).src[6:-6]} <= files.keys()


def test_a_step_without_a_film_has_none() -> None:
    one = reading()
    others = [passage for id, passage in one.passages.items() if id not in (OPEN, CONNECT)]
    assert not any(film_views(one, passage.step, passage.shown) for passage in others)


@pytest.mark.parametrize(
    ("seconds", "read"), [("0", "0:00"), ("65.5", "1:05"), ("600", "10:00"), ("3730", "1:02:10")]
)
def test_times_are_read_as_the_browser_s_controls_tell_them(seconds: str, read: str) -> None:
    from decimal import Decimal

    assert clock(Decimal(seconds)) == read
