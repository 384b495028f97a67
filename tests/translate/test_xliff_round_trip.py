"""Catalogues through XLIFF 2.1 and 1.2 and back: nothing lost, codes in place, valid to others' schemas.

Sources: the OASIS core XSD (by lxml) where the committee's schemas lie beside the project.
"""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebuild.translate.po.entry import Catalogue, Entry, Previous
from guidebuild.translate.segments.codes import escaped
from guidebuild.translate.xliff.entries import read_entries
from guidebuild.translate.xliff.reader import read_xliff
from guidebuild.translate.xliff.writer import write_old_xliff, write_xliff
from tests import needs

Write = Callable[[Catalogue, str, str, str], str]
BOTH = pytest.mark.parametrize("write", [write_xliff, write_old_xliff])

plain = st.text(
    st.characters(blacklist_categories=["Cs", "Cc"], blacklist_characters="\ufffe\uffff"),
    min_size=1,
    max_size=20,
).filter(lambda text: bool(text.strip()))
texts = plain.map(escaped) | plain.map(lambda text: f"Lift <1>{escaped(text)}</1>, then<2/> go on.")
entries = st.builds(
    Entry,
    source=texts,
    translations=st.tuples(texts),
    context=st.uuids().map(lambda one: f"plate/text.{one.hex[:6]}"),
    remarks=st.lists(plain, max_size=1).map(tuple),
    notes=st.sampled_from([(), ("step: Lift",), ("step: Lift", "changed: number 1 → 2")]),
    flags=st.sampled_from([(), ("fuzzy",)]),
    previous=st.builds(Previous, st.none(), st.none() | texts, st.none()),
)


@BOTH
@given(some=st.lists(entries, min_size=1, max_size=4, unique_by=lambda entry: entry.context))
def test_what_is_written_is_read_back(write: Write, some: list[Entry]) -> None:
    catalogue = Catalogue({}, (), tuple(some))
    again, faults = read_entries(write(catalogue, "guides/p2/head.md", "en", "de"))
    assert faults == []
    assert again.entries == catalogue.entries


def test_ours_keep_every_rule_of_the_standard() -> None:
    some = (
        Entry("Lift <1>it</1>.", ("<1>Es</1> heben.",), "a/text.000001"),
        Entry("Go on.", ("",), "a/text.000002"),
        Entry(
            "Old &amp; new.",
            ("Alt.",),
            "a/text.000003",
            flags=("fuzzy",),
            previous=Previous(source="Old."),
        ),
    )
    root, faults = read_xliff(
        write_xliff(Catalogue({"Language": "de"}, (), some), "a.md", "en", "de")
    )
    assert faults == []
    assert root is not None


@needs.shared("xliff-2.1")
def test_ours_are_valid_to_the_committees_own_schema(tmp_path: Path) -> None:
    etree = needs.library("lxml.etree")
    schemas = needs.SHARED / "xliff-2.1" / "schemas"

    class Beside(etree.Resolver):  # type: ignore[name-defined, misc]
        def resolve(self, url: str, _: object, context: object) -> object:
            if url.endswith("xml.xsd"):
                found = next(schemas.rglob("xml.xsd"))
                return self.resolve_filename(str(found), context)
            return None

    parser = etree.XMLParser()
    parser.resolvers.add(Beside())
    schema = etree.XMLSchema(etree.parse(str(schemas / "xliff_core_2.0.xsd"), parser))
    some = (
        Entry(
            "Lift <1>it</1>,<2/> now.", ("<1>Es</1><2/> heben.",), "a/x.000001", notes=("step: A",)
        ),
        Entry("Go on.", ("",), "a/text.000002", remarks=("why?",)),
    )
    text = write_xliff(Catalogue({"Language": "de"}, (), some), "a.md", "en", "de")
    assert schema.validate(etree.fromstring(text.encode())), schema.error_log


def test_segments_that_a_tool_has_cut_are_one_text_again() -> None:
    text = write_xliff(Catalogue({}, (), (Entry("A. B.", ("",), "x"),)), "a.md", "en", "de")
    whole = '<segment state="initial">\n    <source>A. B.</source>\n   </segment>'
    assert whole in text
    cut = text.replace(
        whole,
        '<segment state="translated"><source>A.</source><target>Ah.</target></segment>'
        "<ignorable><source> </source><target> </target></ignorable>"
        '<segment state="translated"><source>B.</source><target>Be.</target></segment>',
    )
    catalogue, faults = read_entries(cut)
    assert faults == []
    assert replace(catalogue.entries[0], line=0) == Entry("A. B.", ("Ah. Be.",), "x")
