"""How the reader knows that this is the unit meant: the picture of the record beside what must be on it."""

from dataclasses import dataclass

from guidebuild.draw.photo import Rendition
from guidebuild.outputs.html.looks import look_path
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.photos import photo_path
from guidebuild.translate.messages.text import Text


@dataclass(frozen=True, slots=True)
class Identity:
    """`svg` is a drawing to stand in the page; else `file` at `src` is a photograph; neither where there is none."""

    expect: Text
    svg: str
    src: str
    file: Rendition | None


def identity(reading: Reading) -> Identity | None:
    """What the record says; None where it says nothing."""
    device = reading.device
    if device.identify is None:
        return None
    look = reading.looks.get(look_path(device))
    file = look.file if look else None
    src = reading.root + photo_path(look_path(device), file) if file else ""
    expect = reading.author.words(device.identify.expect)
    return Identity(expect, look.svg if look else "", src, file)
