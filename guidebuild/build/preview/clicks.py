"""What a click on a page means: the thing, the file of its record, and the picture by its author's name."""

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

from guidebuild.build.preview.place import Click, NoPlace
from guidebuild.device.record import Device
from guidebuild.draw.photo import Rendition
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import pictures_in
from guidebuild.outputs.html.photos import photo_path


def click_of(data: Mapping[str, Any]) -> Click:
    """A click as the page sends it; NoPlace where it is none."""
    try:
        x, y = Decimal(str(data["x"])), Decimal(str(data["y"]))
        if not (x.is_finite() and y.is_finite() and abs(x) < 100_000 and abs(y) < 100_000):
            raise ValueError
        on, name, id_ = str(data["on"]), str(data["name"]), str(data["id"])
    except (KeyError, ValueError, ArithmeticError):
        raise NoPlace("That is no place on a picture.") from None
    if on not in ("view", "picture"):
        raise NoPlace("That is no place on a picture.")
    return Click(on, name, id_, x, y)


def file_of(device: Device, click: Click) -> str:
    """The record's file in which the thing stands: one record may be based on another."""
    keys = device.names.get(click.id, ())
    if not keys:
        raise NoPlace(f"{click.id} is not in this record.")
    return device.things[keys[0]].span.source.path


def pictures(guide: Guide) -> dict[str, str]:
    """Where the page has each photograph, without its width and form, and the name that the author writes."""
    nothing = Rendition(0, 0, "", b"")
    return {
        photo_path(one.path, nothing).rpartition("-")[0]: one.file.text
        for one in pictures_in(guide)
    }
