"""What may change its place: codes that must keep their sequence, codes that must stay, targets in order."""

from collections.abc import Iterator
from itertools import pairwise

from guidebuild.translate.fault import Fault
from guidebuild.translate.xliff.code_rules import CODES
from guidebuild.translate.xliff.tree import Element


def check_order(root: Element) -> Iterator[Fault]:
    """Faults of order, unit by unit."""
    for unit in root.core_within("unit"):
        parts = list(unit.core_within("segment", "ignorable"))
        yield from _targets(parts)
        for side in ("source", "target"):
            yield from _sequences(_codes(parts, side))
        for part in parts:
            source, target = _codes([part], "source"), _codes([part], "target")
            if any(child.name == "target" for child in part.elements):
                yield from _kept(source, _codes(parts, "target"))
                yield from _same_sequence(source, target)


def _codes(parts: list[Element], side: str) -> list[Element]:
    return [
        code
        for part in parts
        for text in part.core_within(side)
        for code in text.core_within(*CODES)
    ]


def _name(code: Element) -> str:
    """What tells a code from another: its id, of an end the id of its start."""
    return code.get("id") or f"end of {code.get('startRef')}"


def _targets(parts: list[Element]) -> Iterator[Fault]:
    """`order` says where a target stands in the unit; one that does not say stands where its segment does."""
    taken: set[int] = set()
    for place, part in enumerate(parts, 1):
        target = next(iter(part.core_within("target")), part)
        said = target.get("order")
        order = int(said) if said.isascii() and said.isdigit() else place
        if order > len(parts):
            yield target.fault(
                "order-too-high", f"the unit has {len(parts)} parts, and none is number {order}"
            )
        elif order in taken:
            yield target.fault("order-not-unique", f"two targets stand at place {order}")
        taken.add(order)


def _sequences(codes: list[Element]) -> Iterator[Fault]:
    """`canReorder=no` continues a sequence that `firstNo` began, with no other code between."""
    inside = False
    for code in codes:
        how = code.get("canReorder", "yes")
        if how == "no" and not inside:
            yield code.fault(
                "sequence-without-start", "no code with `canReorder=firstNo` stands right before"
            )
        inside = how != "yes"
        if inside and (code.get("canDelete", "yes"), code.get("canCopy", "yes")) != ("no", "no"):
            message = "a code that keeps its place can't be deleted or copied: both must say `no`"
            yield code.fault("sequence-can-change", message)


def _kept(source: list[Element], targets: list[Element]) -> Iterator[Fault]:
    there = {_name(code) for code in targets}
    for code in source:
        if code.get("canDelete") == "no" and _name(code) not in there:
            yield code.fault(
                "code-deleted", f"`{_name(code)}` can't be deleted and is not in the target"
            )


def _same_sequence(source: list[Element], target: list[Element]) -> Iterator[Fault]:
    names = [_name(code) for code in target]
    before = {later: earlier for earlier, later in pairwise(names)}
    for first, second in pairwise(source):
        bound = second.get("canReorder") == "no" and _name(second) in names
        if bound and before.get(_name(second)) != _name(first):
            message = (
                f"`{_name(second)}` must stand right behind `{_name(first)}`, as in the source"
            )
            yield second.fault("sequence-changed", message)
