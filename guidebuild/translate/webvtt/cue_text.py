"""The tags inside a caption, as the tree that a browser builds of them (W3C: cue text parsing, DOM)."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from html import unescape

from guidebuild.translate.webvtt.timing import read_stamp, write_stamp

_TOKEN = re.compile(r"<([^>]*)(?:>|$)|([^<]+)")
_SPACE = re.compile(r"[ \t\n\f\r]+")
_KINDS = {"c": "span", "i": "i", "b": "b", "u": "u", "ruby": "ruby", "rt": "rt", "v": "span"}
_KINDS["lang"] = "span"


DEEPEST = 100  # tags inside tags: no caption has more than a few


@dataclass(slots=True)
class Node:
    """An element of a caption: `tag` as written, the HTML element that shows it, its classes, its note."""

    tag: str
    element: str
    classes: tuple[str, ...] = ()
    annotation: str = ""  # who speaks (`v`), the language (`lang`)
    children: list["Node | str"] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class _Tag:
    name: str
    closing: bool
    classes: tuple[str, ...]
    annotation: str


def _tag(inside: str) -> _Tag:
    closing = inside.startswith("/")
    head, _, annotation = _split_once(inside[1:] if closing else inside)
    name, *classes = head.split(".")
    words = _SPACE.sub(" ", unescape(annotation)).strip(" ")
    return _Tag(name, closing, tuple(one for one in classes if one), words)


def _split_once(text: str) -> tuple[str, str, str]:
    found = _SPACE.search(text)
    return (text, "", "") if found is None else (text[: found.start()], " ", text[found.end() :])


def read_cue_text(text: str) -> list[Node | str]:
    """The nodes of a cue's text; a timestamp is a Node whose tag is `?` and whose annotation is the time.

    An end tag that closes nothing is dropped, `rt` counts only inside `ruby`, `</ruby>` closes an open `rt`.
    """
    root = Node("", "")
    path = [root]
    for found in _TOKEN.finditer(text):
        inside, plain = found.groups()
        if plain is not None:
            path[-1].children.append(unescape(plain))
        elif inside[:1].isdigit():
            stamp = read_stamp(inside, 0)
            if stamp is not None and stamp[1] == len(inside):
                path[-1].children.append(Node("?", "", (), write_stamp(stamp[0])))
        else:
            _turn(path, _tag(inside))
    return root.children


def _turn(path: list[Node], tag: _Tag) -> None:
    """Go into a start tag, or out of the element that an end tag closes."""
    here = path[-1].tag
    if tag.closing:
        if tag.name == here and len(path) > 1:
            path.pop()
        elif tag.name == "ruby" and here == "rt":
            del path[-2:]
    elif len(path) > DEEPEST:
        return  # the words inside stay, their dress is left off
    elif tag.name in _KINDS and (tag.name != "rt" or here == "ruby"):
        node = Node(tag.name, _KINDS[tag.name], tag.classes, tag.annotation)
        path[-1].children.append(node)
        path.append(node)


def plain_text(text: str) -> str:
    """What the reader sees of a cue, without tags."""
    return "".join(_plain(read_cue_text(text)))


def _plain(nodes: list[Node | str]) -> Iterator[str]:
    for node in nodes:
        if isinstance(node, str):
            yield node
        else:
            yield from _plain(node.children)
