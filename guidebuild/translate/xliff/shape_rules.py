"""Each core element holds what it may, in order, with the attributes that it may have."""

import re
from collections.abc import Iterator
from functools import cache

from guidebuild.translate.fault import Fault
from guidebuild.translate.xliff.shapes import SHAPES, TYPES, Shape
from guidebuild.translate.xliff.tree import XML, Element

_MODULES = "{urn:oasis:names:tc:xliff:"


def check_shapes(root: Element) -> Iterator[Fault]:
    """Faults of shape, in document order; inside a module's element only core elements are looked at."""
    if not root.core or root.name != "xliff":
        yield root.fault("not-xliff", "the root element is not `xliff` in a namespace of XLIFF 2")
        return
    for element in root.walk():
        if not element.core:
            continue
        shape = SHAPES.get(element.name)
        if shape is None:
            yield element.fault("unknown-element", f"the standard has no element `{element.name}`")
            continue
        yield from _attributes(element, shape)
        yield from _content(element, shape)


def _attributes(element: Element, shape: Shape) -> Iterator[Fault]:
    for name, kind in shape.attributes.items():
        if kind.endswith("!") and name not in element.attributes:
            yield element.fault("attribute-missing", f"`{element.name}` must have `{name}`")
    for name, value in element.attributes.items():
        kind = shape.attributes.get(name, "").rstrip("!")
        if kind:
            fits, wanted = TYPES[kind]
            if not fits(value):
                yield element.fault(
                    "attribute-value", f"`{_short(name)}` is `{value}` and not {wanted}"
                )
        elif not _welcome(name, shape):
            message = f"`{element.name}` may not have `{_short(name)}`"
            yield element.fault("attribute-not-allowed", message)


def _short(name: str) -> str:
    return name.replace(f"{{{XML}}}", "xml:")


def _welcome(name: str, shape: Shape) -> bool:
    """Whether an attribute that the core does not know may stand here."""
    if not name.startswith("{"):
        return False
    return shape.foreign == "any" or (shape.foreign == "modules" and name.startswith(_MODULES))


@cache
def _pattern(holds: tuple[str, ...]) -> re.Pattern[str]:
    """The children's order as one expression over their names, each with a space behind."""
    pieces = []
    for one in holds:
        how_many = one[-1] if one[-1] in "?*+" else ""
        names = one.rstrip("?*+").strip("()").split()
        pieces.append(f"(?:(?:{'|'.join(names)}) ){how_many}")
    return re.compile("".join(pieces))


def _content(element: Element, shape: Shape) -> Iterator[Fault]:
    if not shape.text and any(isinstance(one, str) and one.strip() for one in element.children):
        yield element.fault("text-not-allowed", f"words may not stand in `{element.name}`")
    names = [child.name if child.core else "other" for child in element.elements]
    said = "".join(f"{name} " for name in names)
    pattern = _pattern(shape.holds)
    if pattern.fullmatch(said):
        return
    # the first child at which the order breaks is the one to point at
    for count, child in enumerate(element.elements, 1):
        if not _may_begin("".join(f"{name} " for name in names[:count]), shape.holds):
            word = names[count - 1] if child.core else f"{child.name} (another namespace)"
            yield child.fault(
                "child-not-allowed", f"`{word}` may not stand here in `{element.name}`"
            )
            return
    yield element.fault("child-missing", f"`{element.name}` does not hold all that it must")


def _may_begin(said: str, holds: tuple[str, ...]) -> bool:
    """Whether these children, with others behind them, could still be right."""
    return any(_pattern(_cut(holds, at)).fullmatch(said) for at in range(len(holds)))


def _cut(holds: tuple[str, ...], at: int) -> tuple[str, ...]:
    """The order up to its piece `at`, of which as many may be there as have come so far."""
    last = holds[at]
    return (*holds[:at], last[:-1] + "*" if last[-1] in "*+" else last.rstrip("?") + "?")
