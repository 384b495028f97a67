"""Our numbered codes as XLIFF's inline elements, and back: `<1>` is a `pc` (1.2: `g`), `<2/>` a `ph` (`x`)."""

import re
from collections.abc import Iterator
from xml.sax.saxutils import quoteattr

from guidebuild.translate.xliff.tree import Element

_TOKEN = re.compile(r"<(/?)(\d+)(/?)>")


def inline(text: str, old: bool = False) -> str:
    """A coded text as XML content. It is escaped already: a literal `<` or `&` stands in it as an entity."""

    def element(found: re.Match[str]) -> str:
        closing, number, alone = found.groups()
        if alone:
            return f'<x id="{number}"/>' if old else f'<ph id="{number}" disp="line break"/>'
        if closing:
            return "</g>" if old else "</pc>"
        shown = f"dispStart={quoteattr(f'<{number}>')} dispEnd={quoteattr(f'</{number}>')}"
        return f'<g id="{number}">' if old else f'<pc id="{number}" {shown}>'

    return _TOKEN.sub(element, text)


def coded(element: Element) -> str:
    """The content of a `source` or `target` as coded text; marks of a tool's own are passed through."""
    return "".join(_pieces(element))


def _pieces(element: Element) -> Iterator[str]:
    for child in element.children:
        if isinstance(child, str):
            yield child.replace("&", "&amp;").replace("<", "&lt;")
        elif child.name in ("pc", "g"):
            yield f"<{child.get('id')}>{coded(child)}</{child.get('id')}>"
        elif child.name in ("ph", "x"):
            yield f"<{child.get('id')}/>"
        elif child.name == "sc":
            yield f"<{child.get('id')}>"
        elif child.name == "ec":
            yield f"</{child.get('startRef')}>"
        else:
            yield coded(child)
