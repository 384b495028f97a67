"""An SVG element as path data, and the line class that it gets."""

import re
from collections.abc import Mapping

from guidebuild.draw.curve import numbers
from guidebuild.draw.svg import number

_LINES = "wide mid thin ctr hid sym solid ink tube tube-in tube-dots wire wire-in fig dim num"
_CLASSES = frozenset(_LINES.split())
_STYLE = re.compile(r"(fill|stroke)\s*:\s*([^;]+)")
_ARC = 0.5522847498  # a quarter of a circle as one cubic curve


def data_of(tag: str, attributes: Mapping[str, str]) -> str:
    """Path data of a shape, empty where it has no size."""
    value = {name: (numbers(text) or [0.0])[0] for name, text in attributes.items()}
    get = value.get
    match tag:
        case "path":
            return attributes.get("d", "")
        case "rect":
            rx = get("rx", get("ry", 0))
            return _rect(get("x", 0), get("y", 0), get("width", 0), get("height", 0), rx)
        case "circle":
            return _ellipse(get("cx", 0), get("cy", 0), get("r", 0), get("r", 0))
        case "ellipse":
            return _ellipse(get("cx", 0), get("cy", 0), get("rx", 0), get("ry", 0))
        case "line":
            return _lines([get("x1", 0), get("y1", 0), get("x2", 0), get("y2", 0)], "")
        case "polyline" | "polygon":
            return _lines(numbers(attributes.get("points")), "Z" if tag == "polygon" else "")
    return ""


def _rect(x: float, y: float, w: float, h: float, r: float) -> str:
    if w <= 0 or h <= 0:
        return ""
    r = min(r, w / 2, h / 2)
    if not r:
        return f"M{x},{y}H{x + w}V{y + h}H{x}Z"
    k = r * (1 - _ARC)
    return (
        f"M{x + r},{y}H{x + w - r}C{x + w - k},{y} {x + w},{y + k} {x + w},{y + r}"
        f"V{y + h - r}C{x + w},{y + h - k} {x + w - k},{y + h} {x + w - r},{y + h}"
        f"H{x + r}C{x + k},{y + h} {x},{y + h - k} {x},{y + h - r}"
        f"V{y + r}C{x},{y + k} {x + k},{y} {x + r},{y}Z"
    )


def _ellipse(x: float, y: float, rx: float, ry: float) -> str:
    if rx <= 0 or ry <= 0:
        return ""
    a, b = rx * _ARC, ry * _ARC
    return (
        f"M{x - rx},{y}C{x - rx},{y - b} {x - a},{y - ry} {x},{y - ry}"
        f"C{x + a},{y - ry} {x + rx},{y - b} {x + rx},{y}"
        f"C{x + rx},{y + b} {x + a},{y + ry} {x},{y + ry}C{x - a},{y + ry} {x - rx},{y + b} {x - rx},{y}Z"
    )


def _lines(places: list[float], end: str) -> str:
    pairs = [f"{number(x)},{number(y)}" for x, y in zip(places[::2], places[1::2], strict=False)]
    return f"M{'L'.join(pairs)}{end}" if len(pairs) > 1 else ""


def own_classes(given: str | None) -> str:
    """The sheet's classes among those of an element."""
    return " ".join(name for name in (given or "").split() if name in _CLASSES)


def classes_of(tag: str, attributes: Mapping[str, str], inherited: str) -> str:
    """The sheet's classes of a shape: its own, else its group's, else by how it was painted.

    A drawing program knows nothing of our classes: painted without a line is `ink` (or paper, where the
    paint is white), painted with a line is `mid solid`, a bare line is `mid`.
    """
    own = own_classes(attributes.get("class")) or inherited
    if own:
        return own
    if tag == "text":
        return "fig"
    style = dict(_STYLE.findall(attributes.get("style", "")))
    fill = style.get("fill", attributes.get("fill", "none")).strip().lower()
    stroke = style.get("stroke", attributes.get("stroke", "")).strip().lower()
    if fill == "none":
        return "mid"
    if stroke in {"", "none"}:
        return "solid" if fill in {"white", "#fff", "#ffffff"} else "ink"
    return "mid solid"
