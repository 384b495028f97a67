"""What a reader holds beside the unit to know that it is the one meant: the record's `identify: look`.

A drawing stands in the page itself, so that it is light on dark where the page is; of a photograph one file is written.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from xml.etree import ElementTree

from guidebuild.device.record import Device
from guidebuild.draw.clean import clean_svg
from guidebuild.draw.limits import drawing_refused, is_drawing
from guidebuild.draw.photo import Rendition, photo
from guidebuild.outputs.html.photos import photo_path
from guidebuild.outputs.html.views import Load
from guidebuild.proof.proof import Proof


@dataclass(frozen=True, slots=True)
class Look:
    """`svg` is a cleaned drawing; else `file` is the photograph."""

    path: str
    svg: str
    file: Rendition | None


def looks_of(proofs: Sequence[Proof], load: Load) -> dict[str, Look]:
    """By content path; a file that is no picture is left out."""
    found: dict[str, Look] = {}
    for path in dict.fromkeys(look_path(proof.device) for proof in proofs):
        data = load(path) if path else None
        look = _look(path, data) if data is not None else None
        if look is not None:
            found[path] = look
    return found


def look_path(device: Device) -> str:
    """The content path of what the record names, or ``."""
    look = device.identify.look if device.identify else None
    return f"{device.folder}/{look.text}" if look else ""


def look_files(looks: Mapping[str, Look]) -> Iterator[tuple[str, bytes]]:
    """The photographs among them, at their site paths."""
    for look in looks.values():
        if look.file is not None:
            yield photo_path(look.path, look.file), look.file.data


def _look(path: str, data: bytes) -> Look | None:
    if is_drawing(path):
        text = data.decode("utf-8", "replace")
        return None if drawing_refused(text) else Look(path, _inline(text), None)
    made = photo(data)
    files = [one for one in made.renditions if one.format == "jpg"] if made else []
    return Look(path, "", files[0]) if files else None


def _inline(text: str) -> str:
    """The drawing without ids, which would be those of the page, and without a size of its own."""
    root = clean_svg(text)
    for each in root.iter():
        each.attrib.pop("id", None)
    for name in ("width", "height"):
        root.attrib.pop(name, None)
    root.set("class", "look drawn")
    root.set("focusable", "false")
    return ElementTree.tostring(root, encoding="unicode")
