"""What a record says for the eye: pictures with their points, views, and how to know the unit."""

from decimal import Decimal

from guidebuild.device.record import Hazard, Identify, PicturePoints, View
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said

LEVELS = ("danger", "warning", "caution", "notice")
_A4 = (Decimal(210), Decimal(297))


def points(file: Said, entry: Entry) -> PicturePoints:
    """The points on one picture; a group's map gives its holes theirs."""
    found = {}
    for id_, value in entry.values.items():
        if isinstance(value, Entry):
            found.update({f"{id_}.{hole}": place for hole, place in value.values.items()})
        else:
            found[id_] = value
    return PicturePoints(file, found)


def view(id_: Said, entry: Entry) -> View:
    """A drawing to scale. Without a size it is taken for a sheet of A4."""
    outline = {key: said.text for key, said in entry.entries("outline").items()}
    size = entry.get("size", _A4)
    return View(id_.text, id_.span, entry.said("file"), size, outline, entry.said("name"))


def identify(entry: Entry | None) -> Identify | None:
    """How the reader knows that this is the unit meant."""
    expect = entry.said("expect") if entry else None
    return Identify(entry.said("look"), expect) if entry and expect else None


def hazard(id_: Said, entry: Entry) -> Hazard:
    """A hazard in the record's words; its level is the key of its first sentence."""
    level = next((word for word in LEVELS if word in entry.values), LEVELS[0])
    return Hazard(
        id_.text,
        level,
        entry.said(level) or id_,
        entry.said("result"),
        entry.all_said("avoid"),
        entry.all_said("when-handling"),
        id_.span,
    )
