"""An id is there once in its own reach: files, groups, units, notes, original data, codes, extensions."""

from collections.abc import Iterable, Iterator

from guidebuild.translate.fault import Fault
from guidebuild.translate.xliff.tree import XML, Element

INLINE = ("ph", "pc", "sc", "ec", "mrk", "sm")
_KIN = {"pc": "span", "sc": "span", "ec": "span", "mrk": "mark", "sm": "mark"}
_MODULES = "urn:oasis:names:tc:xliff:"


def check_ids(root: Element) -> Iterator[Fault]:
    """Faults of ids, reach by reach."""
    yield from _once(root.core_within("file"))
    for file in root.core_within("file"):
        yield from _once(file.core_within("group"))
        yield from _once(file.core_within("unit"))
        for holder in (file, *file.core_within("group", "unit")):
            yield from _once(_notes(holder))
            yield from _extensions(holder)
        for unit in file.core_within("unit"):
            yield from _once(unit.core_within("data"))
            yield from _unit(unit)


def _once(elements: Iterable[Element]) -> Iterator[Fault]:
    seen: set[str] = set()
    for element in elements:
        name = element.get("id")
        if name and name in seen:
            yield _twice(element, name)
        seen.add(name)


def _twice(element: Element, name: str) -> Fault:
    return element.fault("id-not-unique", f"the id `{name}` of `{element.name}` was used before")


def _notes(holder: Element) -> Iterator[Element]:
    for notes in holder.elements:
        if notes.core and notes.name == "notes":
            yield from notes.elements


def _extensions(holder: Element) -> Iterator[Fault]:
    """Ids in extensions (not the standard's own modules): once in each namespace in each holder."""
    seen: set[tuple[str, str]] = set()
    for child in holder.elements:
        if child.core or child.space.startswith(_MODULES):
            continue
        for element in child.walk():
            name = element.get(f"{{{XML}}}id") or element.get("id")
            if name and (element.space, name) in seen:
                yield _twice(element, name)
            seen.add((element.space, name))


def _unit(unit: Element) -> Iterator[Fault]:
    """Segments and codes of a unit share one set of names; a code in a target may repeat its source's."""
    parts = list(unit.core_within("segment", "ignorable"))
    sources = [code for part in parts for code in _codes(part, "source")]
    yield from _once([*parts, *sources])
    targets = [code for part in parts for code in _codes(part, "target")]
    yield from _once(targets)
    taken = {part.get("id"): "" for part in parts}
    taken |= {code.get("id"): _KIN.get(code.name, code.name) for code in sources}
    for code in targets:
        name = code.get("id")
        if name and taken.get(name, kin := _KIN.get(code.name, code.name)) != kin:
            yield _twice(code, name)


def _codes(part: Element, side: str) -> Iterator[Element]:
    for element in part.core_within(side):
        yield from element.core_within(*INLINE)
