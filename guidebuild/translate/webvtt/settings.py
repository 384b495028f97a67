"""The settings behind a caption's times and in a region, by the W3C's rules: a bad one is skipped alone."""

import re
from collections.abc import Mapping
from dataclasses import replace
from math import isinf

from guidebuild.translate.webvtt.cue import Placing, Region

_SPACE = " \t\n\f\r"
_PER_CENT = re.compile(r"\d+(?:\.\d+)?%", re.ASCII)
_LINE_NUMBER = re.compile(r"-?\d+(?:\.\d+)?", re.ASCII)
_WHOLE = re.compile(r"\d+", re.ASCII)


def pairs(text: str) -> list[tuple[str, str]]:
    """`name:value` words; what has no colon, or nothing before or after it, is no setting."""
    words = re.split(f"[{_SPACE}]+", text.strip(_SPACE))
    split = (word.partition(":") for word in words)
    return [(name, value) for name, _, value in split if name and value]


def per_cent(text: str) -> float | None:
    """`33.5%` from 0 to 100, or None."""
    if _PER_CENT.fullmatch(text) is None:
        return None
    value = float(text[:-1])
    return value if 0 <= value <= 100 else None


def _two(text: str) -> tuple[float, float] | None:
    first, comma, second = text.partition(",")
    x, y = per_cent(first), per_cent(second)
    return (x, y) if comma and x is not None and y is not None else None


def _line(value: str) -> dict[str, object]:
    place, comma, align = value.partition(",")
    if comma and align not in ("start", "center", "end"):
        return {}
    said: dict[str, object] = {"line_align": align} if comma else {}
    if place.endswith("%"):
        share = per_cent(place)
        return {} if share is None else {**said, "line": share, "snap": False}
    if _LINE_NUMBER.fullmatch(place) is None or isinf(float(place)):
        return {}
    return {**said, "line": float(place), "snap": True}


def _position(value: str) -> dict[str, object]:
    place, comma, align = value.partition(",")
    share = per_cent(place)
    if share is None or (comma and align not in ("line-left", "center", "line-right")):
        return {}
    return {"position": share, **({"position_align": align} if comma else {})}


def read_placing(text: str, regions: Mapping[str, Region]) -> Placing:
    """What stands behind the times of a cue."""
    said: dict[str, object] = {}
    for name, value in pairs(text):
        match name:
            case "region":
                said["region"] = regions.get(value)
            case "vertical" if value in ("rl", "lr"):
                said["vertical"] = value
            case "line":
                said |= _line(value)
            case "position":
                said |= _position(value)
            case "size" if (share := per_cent(value)) is not None:
                said["size"] = share
            case "align" if value in ("start", "center", "end", "left", "right"):
                said["align"] = value
            case _:
                pass
    placing = replace(Placing(), **said)  # type: ignore[arg-type]
    moved = placing.line is not None or placing.size != 100 or placing.vertical
    return replace(placing, region=None) if moved else placing


def read_region(text: str) -> Region:
    """The lines under REGION."""
    said: dict[str, object] = {}
    for name, value in pairs(text):
        match name:
            case "id":
                said["id"] = value
            case "width" if (share := per_cent(value)) is not None:
                said["width"] = share
            case "lines" if _WHOLE.fullmatch(value):
                said["lines"] = int(value)
            case "regionanchor" if (both := _two(value)) is not None:
                said["anchor"] = both
            case "viewportanchor" if (both := _two(value)) is not None:
                said["viewport"] = both
            case "scroll" if value == "up":
                said["scroll"] = True
            case _:
                pass
    return replace(Region(), **said)  # type: ignore[arg-type]
