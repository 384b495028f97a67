"""References inside the document: fragment identifiers, comments to notes, terms."""

from collections.abc import Iterator
from itertools import pairwise

from guidebuild.translate.fault import Fault
from guidebuild.translate.xliff.shapes import is_nmtoken
from guidebuild.translate.xliff.tree import Element

_RANK = {"f": 0, "g": 1, "u": 2}


def check_references(root: Element) -> Iterator[Fault]:
    """Faults of `ref` on marks."""
    for file in root.core_within("file"):
        for unit in file.core_within("unit"):
            for mark in unit.core_within("mrk", "sm"):
                ref = mark.get("ref")
                if ref.startswith("#") and read_fragment(ref) is None:
                    message = f"`{ref}` is no fragment identifier of the standard"
                    yield mark.fault("fragment-not-readable", message)
                elif mark.get("type") == "comment":
                    yield from _comment(mark, file, unit)
                elif mark.get("type") == "mtc:match" and ref:
                    yield mark.fault(
                        "match-with-ref", "a translation candidate's mark has no `ref`"
                    )


def read_fragment(ref: str) -> list[tuple[str, str]] | None:
    """`#f=f1/u=u1/n=n1` as [("f", "f1"), ("u", "u1"), ("n", "n1")]; a bare id has the prefix "".

    Files, groups and units come in this order, one leaf (note, data, target code, module's id, source code)
    last; data and codes lie in units. None where the identifier is not of this form (XLIFF 2.1, 3).
    """
    selectors: list[tuple[str, str]] = []
    for word in ref.removeprefix("#").removeprefix("/").split("/"):
        prefix, equals, name = word.rpartition("=")
        if not is_nmtoken(name) or (equals and not is_nmtoken(prefix)):
            return None
        if len(prefix) == 1 and prefix not in "fgundt":
            return None
        selectors.append((prefix, name))
    ranks = [_RANK.get(prefix, 3) for prefix, _ in selectors]
    if any(later <= earlier for earlier, later in pairwise(ranks)):
        return None
    if len(selectors) > 1 and selectors[-1][0] in ("", "d", "t") and selectors[-2][0] != "u":
        return None
    return selectors


def _comment(mark: Element, file: Element, unit: Element) -> Iterator[Fault]:
    """A comment is said by `value`, or stands in a note of the same unit: one of the two."""
    ref = mark.get("ref")
    if bool(ref) == ("value" in mark.attributes):
        yield mark.fault("comment-said-once", "a comment has either `value` or `ref`")
    elif ref and not _is_note_of(read_fragment(ref), file, unit):
        yield mark.fault("note-not-there", f"`{ref}` is no note of this unit")


def _is_note_of(selectors: list[tuple[str, str]] | None, file: Element, unit: Element) -> bool:
    if not selectors or selectors[-1][0] != "n":
        return False
    *way, (_, note) = selectors
    if way and way[-1][0] != "u":
        return False
    here = {"f": file.get("id"), "u": unit.get("id")}
    if any(here.get(prefix, name) != name for prefix, name in way):
        return False
    return note in {one.get("id") for one in unit.core_within("note")}
