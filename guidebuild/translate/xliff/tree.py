"""XML into a small tree in which every element knows its place; whatever could be used to attack is refused."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from xml.parsers import expat

from guidebuild.translate.fault import Fault

CORE = ("urn:oasis:names:tc:xliff:document:2.0", "urn:oasis:names:tc:xliff:document:2.2")
XML = "http://www.w3.org/XML/1998/namespace"
DEEPEST = 200  # elements inside each other; a real file has about 20
LARGEST = 64 * 2**20  # characters


@dataclass(slots=True, eq=False)
class Element:
    """`space` is the namespace, empty for the XLIFF core; an attribute in a namespace is `{space}name`."""

    space: str
    name: str
    attributes: dict[str, str]
    line: int
    column: int
    parent: "Element | None" = None
    children: list["Element | str"] = field(default_factory=list)

    @property
    def core(self) -> bool:
        """Whether it is one of XLIFF's own elements."""
        return not self.space

    @property
    def elements(self) -> list["Element"]:
        """The child elements."""
        return [child for child in self.children if isinstance(child, Element)]

    def get(self, name: str, otherwise: str = "") -> str:
        """An attribute's value."""
        return self.attributes.get(name, otherwise)

    def walk(self) -> Iterator["Element"]:
        """This element and all inside it, in document order."""
        yield self
        for child in self.elements:
            yield from child.walk()

    def core_within(self, *names: str) -> Iterator["Element"]:
        """Core elements of these names inside it, in document order, not those inside a module's element."""
        for child in self.elements:
            if child.core:
                if child.name in names:
                    yield child
                yield from child.core_within(*names)

    def fault(self, rule: str, message: str) -> Fault:
        """A fault at this element."""
        return Fault(self.line, self.column, rule, message)


class _Refused(Exception):
    """Stops the parser; never leaves this file."""


def _split(name: str) -> tuple[str, str]:
    space, _, local = name.rpartition(" ")
    return ("" if space in CORE else space), local


def _attribute(name: str) -> str:
    space, _, local = name.rpartition(" ")
    return f"{{{space}}}{local}" if space else local


class _Builder:
    def __init__(self) -> None:
        self.parser = expat.ParserCreate("utf-8", namespace_separator=" ")
        self.parser.buffer_text = True
        self.parser.StartElementHandler = self.start
        self.parser.EndElementHandler = self.end
        self.parser.CharacterDataHandler = self.text
        self.parser.StartDoctypeDeclHandler = self.doctype
        self.path: list[Element] = []
        self.root: Element | None = None
        self.fault: Fault | None = None

    def refuse(self, rule: str, message: str) -> None:
        self.fault = Fault(*self.place(), rule, message)
        raise _Refused

    def place(self) -> tuple[int, int]:
        return self.parser.CurrentLineNumber, self.parser.CurrentColumnNumber + 1

    def start(self, name: str, attributes: dict[str, str]) -> None:
        if len(self.path) >= DEEPEST:
            self.refuse("too-deep", f"elements lie more than {DEEPEST} deep inside each other")
        space, local = _split(name)
        parent = self.path[-1] if self.path else None
        kept = {_attribute(key): value for key, value in attributes.items()}
        element = Element(space, local, kept, *self.place(), parent)
        if parent is None:
            self.root = element
        else:
            parent.children.append(element)
        self.path.append(element)

    def end(self, name: str) -> None:
        self.path.pop()

    def text(self, data: str) -> None:
        self.path[-1].children.append(data)

    def doctype(self, *declared: object) -> None:
        self.refuse(
            "no-doctype", "a document type declaration is not read: it could name other files"
        )


def read_tree(text: str) -> tuple[Element | None, Fault | None]:
    """The root element, or the fault that stops the reading (not well-formed, a DOCTYPE, too deep or large)."""
    if len(text) > LARGEST:
        return None, Fault(1, 1, "too-large", f"the file has more than {LARGEST} characters")
    builder = _Builder()
    try:
        builder.parser.Parse(text.encode("utf-8", "replace"), True)
    except _Refused:
        return None, builder.fault
    except expat.ExpatError as error:
        message = f"this is not well-formed XML: {expat.ErrorString(error.code)}"
        return None, Fault(error.lineno, error.offset + 1, "not-well-formed", message)
    return builder.root, None
