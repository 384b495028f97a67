"""Inline codes: each start has its end, both say the same, and what they refer to is there."""

from collections.abc import Iterator

from guidebuild.translate.fault import Fault
from guidebuild.translate.xliff.tree import Element

CODES = ("ph", "pc", "sc", "ec")
_SAME = ("canCopy", "canDelete", "canOverlap", "canReorder")
_PAIRS = ("dataRef", "equiv", "subFlows")
_SUB_TYPES = {"lb": "fmt", "pb": "fmt", "b": "fmt", "i": "fmt", "u": "fmt", "var": "ui"}
_FORMAT = "{urn:oasis:names:tc:xliff:fs:2.0}"
_STARTS = {"sc": "ec", "sm": "em"}


def check_codes(root: Element) -> Iterator[Fault]:
    """Faults of codes and marks, unit by unit."""
    for file in root.core_within("file"):
        units = {unit.get("id") for unit in file.core_within("unit")}
        for unit in file.core_within("unit"):
            for side in ("source", "target"):
                yield from _ends(unit, side)
            data = {one.get("id") for one in unit.core_within("data")}
            for code in unit.core_within(*CODES):
                yield from _itself(code)
                yield from _references(code, data, units)
                yield from _copy(code, unit)


def _on_side(unit: Element, side: str, *names: str) -> Iterator[Element]:
    for text in unit.core_within(side):
        yield from text.core_within(*names)


def _ends(unit: Element, side: str) -> Iterator[Fault]:
    """`sc` with `ec` and `sm` with `em`: one end for each start, behind it, in the same unit."""
    open_: dict[tuple[str, str], Element] = {}
    for code in _on_side(unit, side, "sc", "ec", "sm", "em"):
        key = (_STARTS.get(code.name, code.name), code.get("id") or code.get("startRef"))
        if code.name in _STARTS:
            open_[key] = code
        elif code.get("startRef"):
            start = open_.pop((code.name, code.get("startRef")), None)
            if start is None:
                yield code.fault(
                    "end-without-start", f"no open start is named `{code.get('startRef')}`"
                )
            else:
                yield from _agree(start, code)
    for start in open_.values():
        if start.name == "sm" or start.get("isolated") != "yes":
            yield start.fault(
                "start-without-end", f"`{start.get('id')}` has no end behind it in this unit"
            )


def _agree(start: Element, end: Element) -> Iterator[Fault]:
    if start.get("isolated") == "yes":
        yield start.fault(
            "isolated-with-end", f"`{start.get('id')}` is isolated, yet its end is here"
        )
    for name in _SAME if start.name == "sc" else ():
        wanted = start.get(name, "yes").replace("firstNo", "no")
        if end.get(name, "yes") != wanted:
            yield end.fault(
                "ends-differ", f"`{name}` differs between the start and the end of a code"
            )


def _itself(code: Element) -> Iterator[Fault]:
    """What can be told from a code alone."""
    if code.name == "ec":
        yield from _end_code(code)
    kind, sub = code.get("type"), code.get("subType")
    if sub and not kind:
        yield code.fault("sub-type-without-type", "`subType` stands without `type`")
    elif sub.startswith("xlf:") and _SUB_TYPES.get(sub[4:]) != kind:
        yield code.fault("sub-type-unknown", f"`{sub}` is no sub-type of `{kind}`")
    for name in _PAIRS if code.name == "pc" else ():
        if (f"{name}Start" in code.attributes) != (f"{name}End" in code.attributes):
            yield code.fault("pair-incomplete", f"`{name}Start` and `{name}End` go together")
    if f"{_FORMAT}subFs" in code.attributes and f"{_FORMAT}fs" not in code.attributes:
        yield code.fault("format-incomplete", "`fs:subFs` stands without `fs:fs`")


def _end_code(code: Element) -> Iterator[Fault]:
    alone = code.get("isolated") == "yes"
    if alone and ("startRef" in code.attributes or "id" not in code.attributes):
        yield code.fault("isolated-end", "an isolated `ec` has an `id` and no `startRef`")
    if not alone and ("id" in code.attributes or "startRef" not in code.attributes):
        yield code.fault(
            "end-not-isolated", "an `ec` that is not isolated has a `startRef` and no `id`"
        )
    if not alone and ("dir" in code.attributes or any("{" in name for name in code.attributes)):
        message = "an `ec` that is not isolated takes direction and format from its start"
        yield code.fault("end-attributes", message)


def _references(code: Element, data: set[str], units: set[str]) -> Iterator[Fault]:
    for name in ("dataRef", "dataRefStart", "dataRefEnd"):
        if name in code.attributes and code.get(name) not in data:
            yield code.fault("data-not-there", f"the unit has no original data `{code.get(name)}`")
    for name in ("subFlows", "subFlowsStart", "subFlowsEnd"):
        for one in code.get(name).split():
            if one not in units:
                yield code.fault("unit-not-there", f"the file has no unit `{one}`")


def _copy(code: Element, unit: Element) -> Iterator[Fault]:
    original = code.get("copyOf")
    if not original:
        return
    if any(name.startswith("dataRef") for name in code.attributes):
        yield code.fault("copy-with-data", "a copy takes its original data from what it copies")
    same = {one.get("id") for one in unit.core_within(code.name)}
    if original not in same - {code.get("id")}:
        yield code.fault(
            "copy-of-nothing", f"the unit has no `{code.name}` with the id `{original}`"
        )
