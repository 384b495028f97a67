"""One place written into a record's text: a hole's in mm on its view, a point's in per cent of its picture.

Only the value changes, or one is put in where none was. Comments, order and layout stay as the author has them.
"""

from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal

from guidebuild.build.preview.nodes import Node, Pair, root


@dataclass(frozen=True, slots=True)
class Click:
    """`on`: `view` or `picture`; `name`: the view's id or the picture's file; `id`: what was clicked at."""

    on: str
    name: str
    id: str
    x: Decimal
    y: Decimal

    @property
    def value(self) -> str:
        """`[12.5, 40]`: to a tenth, as people write it."""
        return f"[{_tenth(self.x)}, {_tenth(self.y)}]"


class NoPlace(Exception):
    """Why it can't be written, in one sentence that says what to do."""


def placed(text: str, click: Click) -> str:
    """The record's text with the place in it; NoPlace where the author must say something first."""
    whole = root(text)
    if whole is None:
        raise NoPlace("The record can't be read; see the findings.")
    return _hole(text, whole, click) if click.on == "view" else _point(text, whole, click)


def _hole(text: str, whole: Node, click: Click) -> str:
    group, _, hole = click.id.partition(".")
    holes = _down(whole, "fasteners", group, "holes")
    if holes is None or not hole:
        raise NoPlace(f"{click.id} is no hole of this record.")
    if holes.value.kind != "map":
        raise NoPlace(f"Name the holes of {group} first: `holes: {{{hole}: , other: }}`.")
    view = _down(whole, "fasteners", group, "view")
    if view is not None and view.value.inside != click.name:
        raise NoPlace(
            f"{group} is placed on the view {view.value.inside}, and this is {click.name}."
        )
    pair = holes.value.get(hole)
    if pair is None:
        raise NoPlace(f"{group} has no hole {hole}.")
    if pair.value.kind == "map":
        known = pair.value.get("xy")
        return (
            _set(text, known, click) if known else _insert(text, pair.value, f"xy: {click.value}")
        )
    return _set(text, pair, click)


def _point(text: str, whole: Node, click: Click) -> str:
    group, _, hole = click.id.partition(".")
    picture = _down(whole, "pictures", click.name)
    if picture is None:
        return _new_picture(text, whole, click)
    if picture.value.kind != "map":
        raise NoPlace(f"`pictures: {click.name}:` must be a map first: write {{}}.")
    pair = picture.value.get(click.id) or picture.value.get(group)
    if pair is None:
        words = f"{group}: {{{hole}: {click.value}}}" if hole else f"{group}: {click.value}"
        return _insert(text, picture.value, words)
    if not hole or pair.value.kind != "map":
        return _set(text, pair, click)
    known = pair.value.get(hole)
    return (
        _set(text, known, click) if known else _insert(text, pair.value, f"{hole}: {click.value}")
    )


def _down(node: Node, *keys: str) -> Pair | None:
    pair: Pair | None = None
    for key in keys:
        pair = node.get(key)
        if pair is None:
            return None
        node = pair.value
    return pair


def _set(text: str, pair: Pair, click: Click) -> str:
    """The value of a pair, exchanged; where there was none, put behind the colon."""
    if pair.value.kind == "nothing":
        colon = text.index(":", pair.key.end) + 1
        rest = text[colon:].lstrip(" ")
        rest = rest if rest[:1] in (",", "}") else text[colon:]
        return f"{text[:colon]} {click.value}{rest}"
    return text[: pair.value.start] + click.value + text[pair.value.end :]


def _insert(text: str, inside: Node, words: str) -> str:
    """One more pair at the head of a map, in its own form."""
    first = inside.first()
    if inside.flow:
        at = inside.start + 1
        return text[:at] + words + (", " if first else "") + text[at:]
    if first is None:
        return text[: inside.start] + f"{{{words}}}" + text[inside.end :]
    begin = text.rfind("\n", 0, first.key.start) + 1
    indent = text[begin : first.key.start]
    return text[: first.key.start] + words + _line_end(text) + indent + text[first.key.start :]


def _new_picture(text: str, whole: Node, click: Click) -> str:
    group, _, hole = click.id.partition(".")
    words = f"{{{group}: {{{hole}: {click.value}}}}}" if hole else f"{{{group}: {click.value}}}"
    pictures = whole.get("pictures")
    if pictures is not None and pictures.value.kind == "map":
        return _insert(text, pictures.value, f"{click.name}: {words}")
    end = _line_end(text)
    return f"{text.rstrip()}{end}{end}pictures:{end}  {click.name}: {words}{end}"


def _line_end(text: str) -> str:
    return "\r\n" if "\r\n" in text else "\n"


def _tenth(value: Decimal) -> str:
    return f"{value.quantize(Decimal('0.1'), ROUND_HALF_UP).normalize():f}"
