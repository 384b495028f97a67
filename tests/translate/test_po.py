"""PO catalogues: read whatever a tool has made of them, written in one form."""

import subprocess
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebuild.translate.po.entry import Catalogue, Entry, Previous
from guidebuild.translate.po.reader import read_po
from guidebuild.translate.po.writer import write_po
from tests import needs

HEADER = {
    "Project-Id-Version": "P2-03 2",
    "PO-Revision-Date": "2026-10-02 09:00+0000",
    "Last-Translator": "Bench 2 <bench2@tarnwick.example>",
    "Language-Team": "none",
    "Language": "de",
    "MIME-Version": "1.0",
    "Content-Type": "text/plain; charset=UTF-8",
    "Content-Transfer-Encoding": "8bit",
}

SAMPLE = """\
# Larch P2, German
msgid ""
msgstr ""
"Language: de\\n"

# ask the bench
#. step: Remove the plate
#: guides/larch-p2/replace.md#plate
#, fuzzy
#| msgid "Lift the plate."
msgctxt "plate/1"
msgid ""
"Lift the plate"
" slowly."
msgstr "Die Platte anheben."

#~ msgctxt "plate/2"
#~ msgid "Gone."
#~ msgstr "Weg."
"""


def test_a_wrapped_entry_with_all_its_comments_is_read() -> None:
    catalogue, faults = read_po(SAMPLE)
    assert faults == []
    assert catalogue.header == {"Language": "de"}
    assert catalogue.entries[0] == Entry(
        source="Lift the plate slowly.",
        translations=("Die Platte anheben.",),
        context="plate/1",
        remarks=("ask the bench",),
        notes=("step: Remove the plate",),
        references=("guides/larch-p2/replace.md#plate",),
        flags=("fuzzy",),
        previous=Previous(source="Lift the plate."),
    )
    assert catalogue.entries[1].obsolete


@pytest.mark.parametrize(
    ("text", "place", "rule"),
    [
        ('msgid "a\nmsgstr "b"', (1, 9), "string-not-readable"),
        ('msgid "a"\nmsgstr "\\q"', (2, 9), "string-not-readable"),
        ('msgid "a"\nmsgid "b"', (2, 1), "keyword-twice"),
        ('msgid "a"\nhello', (2, 1), "line-not-readable"),
        ('"a"', (1, 1), "string-without-keyword"),
        ('msgid "a"', (1, 1), "keyword-missing"),
        ('msgid "a"\nmsgstr ""\n\nmsgid "a"\nmsgstr ""', (4, 1), "entry-twice"),
    ],
)
def test_a_broken_file_says_where(text: str, place: tuple[int, int], rule: str) -> None:
    _, faults = read_po(text)
    assert (faults[0].line, faults[0].column, faults[0].rule) == (*place, rule)


texts = st.text(st.characters(blacklist_categories=["Cs"]), max_size=30)
lines = st.text(st.characters(blacklist_categories=["Cs", "Cc", "Zl", "Zp"]), max_size=20).map(
    str.strip
)
sources = texts.filter(bool)
entries = st.builds(
    Entry,
    source=sources,
    translations=st.tuples(texts),
    context=st.none() | texts,
    remarks=st.lists(lines.filter(lambda line: line[:1] not in tuple(".:,|~")), max_size=2).map(
        tuple
    ),
    notes=st.lists(lines, max_size=2).map(tuple),
    flags=st.sampled_from([(), ("fuzzy",), ("python-brace-format", "fuzzy")]),
    previous=st.builds(Previous, st.none() | texts, st.none() | texts),
    obsolete=st.just(False),
)


@given(st.lists(entries, max_size=5, unique_by=lambda entry: (entry.context, entry.source)))
def test_what_is_written_is_read_back(some: list[Entry]) -> None:
    catalogue = Catalogue(HEADER, ("Larch P2",), tuple(some))
    again, faults = read_po(write_po(catalogue))
    assert faults == []
    assert again == catalogue


@given(st.text())
def test_no_text_stops_the_reader(text: str) -> None:
    for one in (text, SAMPLE + text, f'msgid "{text}"\nmsgstr "{text}"'):
        read_po(one)


@needs.program("msgfmt")
def test_gnu_gettext_accepts_it_and_its_rewrite_comes_back_to_our_bytes(tmp_path: Path) -> None:
    """Source: GNU gettext's own msgfmt --check and msgcat (which wraps and sorts by its own taste)."""
    long = (
        "Lift the plate, turn it by a quarter, and lay it on the mat with its two springs upwards. "
        * 3
    )
    some = [
        Entry(source=long, translations=("Platte heben.\nUnd ablegen.",), context="plate/1"),
        Entry(
            source='Say "stop".',
            translations=("„Halt“ sagen.",),
            context="plate/2",
            notes=("a note",),
        ),
        Entry(source="Gone.", translations=("Weg.",), context="plate/9", obsolete=True),
    ]
    ours = write_po(Catalogue(HEADER, (), tuple(some)))
    path = tmp_path / "replace.po"
    path.write_text(ours, encoding="utf-8")
    check = subprocess.run(
        ["msgfmt", "--check", "-v", "-o", "/dev/null", path], capture_output=True, text=True
    )
    assert check.returncode == 0, check.stderr
    rewritten = subprocess.run(["msgcat", path], capture_output=True, check=True).stdout.decode()
    assert rewritten != ours
    catalogue, faults = read_po(rewritten)
    assert faults == []
    assert write_po(catalogue) == ours
