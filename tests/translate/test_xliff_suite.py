"""XLIFF against the test suite of the standard's own committee: every valid file read, every bad one refused.

Source: OASIS XLIFF TC, repository oasis-tcs/xliff-xliff-22, folder xliff-21/test-suite/core.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from guidebuild.translate.xliff.reader import read_xliff
from tests import needs

DATA = needs.SHARED / "xliff-2.1"
outside = needs.shared("xliff-2.1")
VALID = sorted(path.name for path in DATA.glob("valid/*.xlf"))

# Which rule refuses which file. The file's name says what is wrong in it.
REFUSED = {
    "CommentWithValueAndRef": "comment-said-once",
    "CopyOfWithBadReference": "copy-of-nothing",
    "CopyOfWithOriginalData": "copy-with-data",
    "DataRefWithoutOriginalData": "data-not-there",
    "DifferentCanDeleteInScAndEc": "ends-differ",
    "DifferentCanReorderInScAndEc": "ends-differ",
    "DuplicateExtElemIdsInFile": "id-not-unique",
    "DuplicateExtElemIdsInUnit": "id-not-unique",
    "DuplicateNoteIdsInGroup": "id-not-unique",
    "EcBeforeSc": "end-without-start",
    "EmptySkeletonWithoutHref": "skeleton",
    "GroupIdNotUnique": "id-not-unique",
    "IgnorableIdNotUnique": "id-not-unique",
    "InvalidCommentAnnotation1": "comment-said-once",
    "InvalidCommentAnnotation3": "note-not-there",
    "InvalidDataRef": "data-not-there",
    "InvalidDataRefStart": "data-not-there",
    "InvalidExtensionAttributeOnPc": "attribute-not-allowed",
    "InvalidExtensionAttributeOnSource": "attribute-not-allowed",
    "InvalidExtensionElementInData": "child-not-allowed",
    "InvalidExtensionElementInOriginalData": "child-not-allowed",
    "InvalidExtensionElementOutsideFile": "child-not-allowed",
    "InvalidFSAttributeOnEc": "end-attributes",
    "InvalidFragIdBadOrder": "fragment-not-readable",
    "InvalidFragIdMissplacedLeaf": "fragment-not-readable",
    "InvalidFragIdPrefixNotNmtoken": "fragment-not-readable",
    "InvalidFragIdSyntax": "fragment-not-readable",
    "InvalidHexRangeOnCp": "attribute-value",
    "InvalidId1": "attribute-value",
    "InvalidId3": "attribute-value",
    "InvalidIsolatedOnSc": "isolated-with-end",
    "InvalidLoneSm": "start-without-end",
    "InvalidNotesInFile": "child-not-allowed",
    "InvalidNotesInUnit": "child-not-allowed",
    "InvalidTranslateInSegment": "attribute-not-allowed",
    "InvalidTypeValue": "attribute-value",
    "InvalidXmlLangInheritedFromFile": "language-differs",
    "InvalidXmlLangInheritedFromUnit": "language-differs",
    "InvalidXmlLangOnGroup": "language-differs",
    "IsolatedEcWithId": "isolated-end",
    "MissingIsolatedOnSc": "start-without-end",
    "MissingNonRemovable2": "code-deleted",
    "NoFile": "child-missing",
    "NoTrgLangWithIgnorable": "target-language-missing",
    "NonEmptySkeletonWithHref": "skeleton",
    "NotesWithoutNote": "child-missing",
    "OrderNotUnique2": "order-not-unique",
    "PartIdNotUnique": "id-not-unique",
    "SegmentIdNotUnique": "id-not-unique",
    "SrcLangNotWellFormed": "attribute-value",
    "SubFlowWithInvalidValue": "attribute-value",
    "SubTypeWithoutType": "sub-type-without-type",
    "TwoSourceInUnit": "child-not-allowed",
    "UnknownDataRefEndValue": "data-not-there",
    "UnknownDataRefValue": "data-not-there",
    "WrongReordering1": "sequence-changed",
    "WrongSourceLang": "language-differs",
    "XmlLangNotWellFormed": "attribute-value",
    "canReorderContext1": "sequence-can-change",
    "canReorderContext3": "sequence-can-change",
}


@outside
@pytest.mark.parametrize("name", VALID)
def test_a_valid_file_is_read(name: str) -> None:
    root, faults = read_xliff((DATA / "valid" / name).read_text(encoding="utf-8"))
    assert root is not None
    assert faults == []


@outside
@pytest.mark.parametrize(("name", "rule"), REFUSED.items())
def test_an_invalid_file_is_refused_by_the_rule_it_breaks(name: str, rule: str) -> None:
    root, faults = read_xliff((DATA / "invalid" / f"bad_{name}.xlf").read_text(encoding="utf-8"))
    assert root is None
    assert rule in {fault.rule for fault in faults}


@outside
def test_the_whole_suite_was_there() -> None:
    assert len(VALID) == 25
    assert {path.stem for path in DATA.glob("invalid/*.xlf")} == {f"bad_{name}" for name in REFUSED}


def document(body: str) -> str:
    start = '<xliff xmlns="urn:oasis:names:tc:xliff:document:2.0" version="2.1" srcLang="en" trgLang="de">'
    return f'{start}\n<file id="f"><unit id="u"><segment>{body}</segment></unit></file></xliff>'


def test_a_fault_stands_where_the_element_begins() -> None:
    _, faults = read_xliff(document("<source>Lift.</source><target>Heben.</target><target/>"))
    assert [(fault.line, fault.column, fault.rule) for fault in faults] == [
        (2, 81, "child-not-allowed")
    ]


@pytest.mark.parametrize(
    ("text", "rule"),
    [
        ("", "not-well-formed"),
        ("<xliff>", "not-well-formed"),
        ("<note/>", "not-xliff"),
        ('<!DOCTYPE x [<!ENTITY a "b">]><x>&a;</x>', "no-doctype"),
        ('<!DOCTYPE x SYSTEM "other.dtd"><x/>', "no-doctype"),
        ("<a>" * 1000, "too-deep"),
    ],
)
def test_hostile_or_broken_files_are_refused_at_once(text: str, rule: str) -> None:
    root, faults = read_xliff(text)
    assert root is None
    assert faults[0].rule == rule


@given(st.text())
def test_no_text_stops_the_reader(text: str) -> None:
    for one in (text, document(text), document(f"<source>{text}</source>")):
        root, faults = read_xliff(one)
        assert (root is None) == bool(faults)
