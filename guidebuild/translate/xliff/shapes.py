"""Which core element may hold what, and which attributes of which type: the standard's grammar as a table.

Source: OASIS, XLIFF 2.1, the core XML schema and section 4.2 (elements) and 4.3 (attributes).
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass

_NMTOKEN = re.compile(r"[-.:\w\u00b7]+")
_OWN = re.compile(r"[^\s:]+:[^\s:]+")
# RFC 5646, 2.1: language, script, region, variants, extensions, private use
_LANGUAGE = re.compile(
    r"(?:[a-z]{2,3}(?:-[a-z]{3}){0,3}|[a-z]{4,8})(?:-[a-z]{4})?(?:-(?:[a-z]{2}|\d{3}))?"
    r"(?:-(?:[a-z\d]{5,8}|\d[a-z\d]{3}))*(?:-[a-wy-z\d](?:-[a-z\d]{2,8})+)*(?:-x(?:-[a-z\d]{1,8})+)?"
    r"|x(?:-[a-z\d]{1,8})+",
    re.IGNORECASE | re.ASCII,
)
_HEX = re.compile(r"[\da-fA-F]{4,6}")


def _one_of(*words: str) -> Callable[[str], bool]:
    return lambda value: value in words


def is_language(value: str) -> bool:
    """A well-formed language tag."""
    return _LANGUAGE.fullmatch(value) is not None


def is_nmtoken(value: str) -> bool:
    """A name as ids are."""
    return _NMTOKEN.fullmatch(value) is not None


def _tokens(value: str) -> bool:
    return bool(value.split()) and all(is_nmtoken(word) for word in value.split())


def _own(value: str) -> bool:
    return _OWN.fullmatch(value) is not None


def _mark_type(value: str) -> bool:
    return value in ("generic", "comment", "term") or _own(value)


def _never_in_xml(value: str) -> bool:
    """A character that XML can't hold; any other is written as itself."""
    if _HEX.fullmatch(value) is None:
        return False
    code = int(value, 16)
    fine = code in (0x9, 0xA, 0xD) or 0x20 <= code <= 0xD7FF
    return code <= 0x10FFFF and not (fine or 0xE000 <= code <= 0xFFFD or code >= 0x10000)


TYPES: Mapping[str, tuple[Callable[[str], bool], str]] = {
    "text": (lambda value: True, "text"),
    "name": (is_nmtoken, "a name of letters, figures and - . _ :"),
    "names": (_tokens, "names with spaces between them"),
    "language": (is_language, "a language tag such as `de` or `pt-BR`"),
    "yes-no": (_one_of("yes", "no"), "`yes` or `no`"),
    "yes-first-no": (_one_of("yes", "no", "firstNo"), "`yes`, `no` or `firstNo`"),
    "direction": (_one_of("ltr", "rtl", "auto"), "`ltr`, `rtl` or `auto`"),
    "space": (_one_of("default", "preserve"), "`default` or `preserve`"),
    "preserve": (_one_of("preserve"), "`preserve`"),
    "side": (_one_of("source", "target"), "`source` or `target`"),
    "state": (_one_of("initial", "translated", "reviewed", "final"), "a state of the standard"),
    "priority": (
        lambda value: value.isascii() and value.isdigit() and 1 <= int(value) <= 10,
        "1 to 10",
    ),
    "count": (
        lambda value: value.isascii() and value.isdigit() and int(value) > 0,
        "a number from 1 up",
    ),
    "own": (_own, "`prefix:value`"),
    "code-type": (
        _one_of("fmt", "ui", "quote", "link", "image", "other"),
        "fmt, ui, quote, link, image or other",
    ),
    "mark-type": (_mark_type, "generic, comment, term or `prefix:value`"),
    "hex": (_never_in_xml, "the code of a character that XML can't hold, 4 to 6 figures"),
    "version": (_one_of("2.0", "2.1", "2.2"), "2.0, 2.1 or 2.2"),
}


@dataclass(frozen=True, slots=True)
class Shape:
    """`holds`: the children in order, each `name`, `name?`, `name*`, `name+`, or alternatives `(a b)+`.

    `other` stands for elements of other namespaces. `text` says whether words may stand inside. A `!`
    after an attribute's type: it must be there. `foreign`: `any` attributes of other namespaces, those of
    `modules` only, or none.
    """

    holds: tuple[str, ...]
    attributes: Mapping[str, str]
    text: bool = False
    foreign: str = ""


_SPACE = {"{http://www.w3.org/XML/1998/namespace}space": "space"}
_LANG = {"{http://www.w3.org/XML/1998/namespace}lang": "language"}
_HANDLING = {
    "canResegment": "yes-no",
    "translate": "yes-no",
    "srcDir": "direction",
    "trgDir": "direction",
}
_INLINE = "(cp ph pc sc ec mrk sm em)*"
_CODE = {
    "canCopy": "yes-no",
    "canDelete": "yes-no",
    "canReorder": "yes-first-no",
    "copyOf": "name",
    "subType": "own",
    "type": "code-type",
}
_ALONE = {**_CODE, "dataRef": "name", "disp": "text", "equiv": "text", "subFlows": "names"}
_SPANNING = {**_ALONE, "canOverlap": "yes-no", "dir": "direction", "isolated": "yes-no"}
_MARK = {"id": "name!", "translate": "yes-no", "type": "mark-type", "ref": "text", "value": "text"}
_BOTH_ENDS = {
    name + end: kind
    for name, kind in {
        "disp": "text",
        "equiv": "text",
        "dataRef": "name",
        "subFlows": "names",
    }.items()
    for end in ("Start", "End")
}

SHAPES: Mapping[str, Shape] = {
    "xliff": Shape(
        ("file+",),
        {"version": "version!", "srcLang": "language!", "trgLang": "language", **_SPACE},
        foreign="any",
    ),
    "file": Shape(
        ("skeleton?", "other*", "notes?", "(unit group)+"),
        {"id": "name!", "original": "text", **_HANDLING, **_SPACE},
        foreign="any",
    ),
    "skeleton": Shape(("other*",), {"href": "text"}, text=True),
    "group": Shape(
        ("other*", "notes?", "(unit group)*"),
        {"id": "name!", "name": "text", "type": "own", **_HANDLING, **_SPACE},
        foreign="any",
    ),
    "unit": Shape(
        ("other*", "notes?", "originalData?", "(segment ignorable)+"),
        {"id": "name!", "name": "text", "type": "own", **_HANDLING, **_SPACE},
        foreign="any",
    ),
    "segment": Shape(
        ("source", "target?"),
        {"id": "name", "canResegment": "yes-no", "state": "state", "subState": "own"},
    ),
    "ignorable": Shape(("source", "target?"), {"id": "name"}),
    "notes": Shape(("note+",), {}),
    "note": Shape(
        (),
        {"id": "name", "appliesTo": "side", "category": "text", "priority": "priority"},
        text=True,
        foreign="any",
    ),
    "originalData": Shape(("data+",), {}),
    "data": Shape(
        ("cp*",),
        {
            "id": "name!",
            "dir": "direction",
            "{http://www.w3.org/XML/1998/namespace}space": "preserve",
        },
        text=True,
    ),
    "source": Shape((_INLINE,), {**_LANG, **_SPACE}, text=True),
    "target": Shape((_INLINE,), {"order": "count", **_LANG, **_SPACE}, text=True),
    "cp": Shape((), {"hex": "hex!"}),
    "ph": Shape((), {"id": "name!", **_ALONE}, foreign="modules"),
    "pc": Shape(
        (_INLINE,),
        {"id": "name!", **_CODE, **_BOTH_ENDS, "canOverlap": "yes-no", "dir": "direction"},
        text=True,
        foreign="modules",
    ),
    "sc": Shape((), {"id": "name!", **_SPANNING}, foreign="modules"),
    "ec": Shape((), {"id": "name", "startRef": "name", **_SPANNING}, foreign="modules"),
    "mrk": Shape((_INLINE,), _MARK, text=True, foreign="any"),
    "sm": Shape((), _MARK, foreign="any"),
    "em": Shape((), {"startRef": "name!"}),
}
