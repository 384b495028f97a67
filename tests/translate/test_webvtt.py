"""WebVTT against files that no one here wrote: web-platform-tests' cues as a browser reads them.

Source: W3C, repository w3c/webvtt.js (CC0); the cues as Chromium 156 gives them through `<track>`.
"""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebuild.translate.webvtt.cue import Captions, Cue
from guidebuild.translate.webvtt.cue_text import Node, plain_text, read_cue_text
from guidebuild.translate.webvtt.reader import read_webvtt
from guidebuild.translate.webvtt.timing import read_stamp, write_stamp
from guidebuild.translate.webvtt.writer import write_webvtt
from tests import needs

DATA = needs.SHARED / "webvtt"
outside = needs.shared("webvtt")
FILES = sorted(path.name for path in DATA.glob("*.vtt")) if DATA.is_dir() else []
TREES = ["entities", "tags", "text", "timestamps", "tree-building"]


def shown(cue: Cue) -> dict[str, object]:
    """A cue in the words of a browser's TextTrackCue."""
    placing = cue.placing
    return {
        "id": cue.id,
        "start": cue.start / 1000,
        "end": cue.end / 1000,
        "text": cue.text,
        "vertical": placing.vertical,
        "line": "auto" if placing.line is None else placing.line,
        "snapToLines": placing.snap,
        "position": "auto" if placing.position is None else placing.position,
        "size": placing.size,
        "align": placing.align,
    }


@outside
@pytest.mark.parametrize("name", FILES)
def test_a_file_gives_the_cues_that_a_browser_shows(name: str) -> None:
    cues = (DATA / "cues.json").read_text(encoding="utf-8")
    wanted = json.loads(cues, parse_int=float)[name]
    captions = read_webvtt((DATA / name).read_bytes().decode("utf-8"))
    if wanted is None:
        assert captions is None
        return
    assert captions is not None
    got = [shown(cue) for cue in captions.cues]
    assert len(got) == len(wanted)
    assert got == [{key: cue[key] for key in one} for one, cue in zip(got, wanted, strict=True)]


@outside
def test_all_42_files_and_302_cues_were_there() -> None:
    cues = json.loads((DATA / "cues.json").read_text(encoding="utf-8"))
    assert len(FILES) == 42
    assert sum(len(some) for some in cues.values() if some) == 302


def tree(nodes: list[Node | str], depth: int = 0) -> str:
    """A tree in the notation of the W3C's expectations."""
    indent = "| " + "  " * depth
    said = ""
    for node in nodes:
        if isinstance(node, str):
            said += f'{indent}"{node}"\n'
            continue
        if node.tag == "?":
            said += f"{indent}<?timestamp {node.annotation}>\n"
            continue
        said += f"{indent}<{node.element}>\n"
        said += f'{indent}  class="{" ".join(node.classes)}"\n' if node.classes else ""
        said += f'{indent}  lang="{node.annotation}"\n' if node.tag == "lang" else ""
        said += f'{indent}  title="{node.annotation}"\n' if node.tag == "v" else ""
        said += tree(node.children, depth + 1)
    return said


@outside
@pytest.mark.parametrize("name", TREES)
def test_a_cue_text_gives_the_tree_that_the_standard_wants(name: str) -> None:
    for case in json.loads((DATA / f"{name}.json").read_text(encoding="utf-8")):
        captions = read_webvtt("WEBVTT\n\n00:00.000 --> 00:01.000\n" + case["text"])
        assert captions is not None
        assert tree(read_cue_text(captions.cues[0].text)) == case["expectedTree"], case["text"]


@pytest.mark.parametrize(
    ("text", "milliseconds"),
    [("00:01.500", 1500), ("02:10.000", 130_000), ("100:00:00.001", 360_000_001)],
)
def test_hours_may_be_left_out_and_may_be_long(text: str, milliseconds: int) -> None:
    assert read_stamp(text, 0) == (milliseconds, len(text))
    assert read_stamp(write_stamp(milliseconds), 0) == (
        milliseconds,
        len(write_stamp(milliseconds)),
    )


@pytest.mark.parametrize("text", ["1:00.000", "60:00.000", "00:60.000", "00:00.00", "00:00:0.000"])
def test_a_time_that_is_written_wrongly_is_no_time(text: str) -> None:
    assert read_stamp(text, 0) is None


def test_what_the_reader_sees_has_no_tags() -> None:
    assert (
        plain_text("<v Bench 2>Lift the <b>plate</b> &amp; turn it") == "Lift the plate & turn it"
    )


words = st.text(st.characters(blacklist_categories=["Cs", "Cc"]), min_size=1, max_size=20)
sentences = words.filter(lambda text: "-->" not in text and text.strip())
cues = st.builds(
    Cue, st.sampled_from(["", "1", "lift"]), st.integers(0, 10**8), st.integers(0, 10**8), sentences
)


@given(st.lists(cues, max_size=5))
def test_what_is_written_is_read_back(some: list[Cue]) -> None:
    captions = Captions("", (), (), tuple(some))
    assert read_webvtt(write_webvtt(captions)) == captions


@given(st.text())
def test_no_text_stops_the_reader(text: str) -> None:
    for start in ("", "WEBVTT\n\n", "WEBVTT\n\n00:00.000 --> 00:01.000\n"):
        captions = read_webvtt(start + text)
        for cue in captions.cues if captions else ():
            plain_text(cue.text)
