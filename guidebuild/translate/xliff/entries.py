"""An XLIFF file that came back, as a catalogue: the same values as a PO file gives, or its faults."""

from guidebuild.translate.fault import Fault
from guidebuild.translate.po.entry import Catalogue, Entry, Previous
from guidebuild.translate.xliff.coded import coded
from guidebuild.translate.xliff.reader import read_xliff
from guidebuild.translate.xliff.tree import Element, read_tree
from guidebuild.translate.xliff.writer import OUTDATED

_OLD = "urn:oasis:names:tc:xliff:document:1.2"
_NOT_YET = ("needs-translation", "needs-review-translation", "needs-adaptation", "new")


def read_entries(text: str) -> tuple[Catalogue, list[Fault]]:
    """The entries of an XLIFF 2 or 1.2 file; no entry where the file has a fault."""
    root, fault = read_tree(text.removeprefix("\ufeff"))
    if fault is not None:
        return Catalogue({}, (), ()), [fault]
    if root is not None and root.space == _OLD and root.name == "xliff":
        return Catalogue(
            {}, (), tuple(_old(one) for one in root.walk() if one.name == "trans-unit")
        ), []
    root, faults = read_xliff(text)
    if root is None:
        return Catalogue({}, (), ()), faults
    return Catalogue(_header(root), (), tuple(_new(unit) for unit in root.core_within("unit"))), []


def _header(root: Element) -> dict[str, str]:
    lines = (_text(note) for note in root.core_within("note") if note.get("category") == "header")
    return {name: value for name, _, value in (line.partition(": ") for line in lines)}


def _text(element: Element) -> str:
    return "".join(one for one in element.children if isinstance(one, str))


def _child(element: Element, name: str) -> Element | None:
    return next((one for one in element.walk() if one.name == name), None)


def _new(unit: Element) -> Entry:
    """Segments that a tool has cut a unit into are read as one text again."""
    segments = list(unit.core_within("segment", "ignorable"))
    source = "".join(coded(one) for part in segments for one in part.core_within("source"))
    target = "".join(coded(one) for part in segments for one in part.core_within("target"))
    states = {part.get("state", "initial") for part in segments if part.name == "segment"}
    outdated = any(part.get("subState") == OUTDATED for part in segments)
    return _entry(
        unit, unit.get("name") or unit.get("id"), source, target, outdated or "initial" in states
    )


def _old(unit: Element) -> Entry:
    source, target = _child(unit, "source"), _child(unit, "target")
    said = coded(target) if target is not None else ""
    fuzzy = target is not None and target.get("state") in _NOT_YET
    name = unit.get("id")
    return _entry(unit, name, coded(source) if source is not None else "", said, fuzzy)


def _entry(unit: Element, name: str, source: str, target: str, fuzzy: bool) -> Entry:
    notes = [(note.get("category") or note.get("from"), _text(note)) for note in _all_notes(unit)]
    previous = [text for kind, text in notes if kind == "previous-source"]
    return Entry(
        source=source,
        translations=(target,),
        context=name,
        remarks=tuple(text for kind, text in notes if kind == "remark"),
        notes=tuple(text for kind, text in notes if kind in ("context", "changed")),
        flags=("fuzzy",) if fuzzy and target else (),
        previous=Previous(source=previous[0] if previous else None),
        line=unit.line,
    )


def _all_notes(unit: Element) -> list[Element]:
    return [one for one in unit.walk() if one.name == "note"]
