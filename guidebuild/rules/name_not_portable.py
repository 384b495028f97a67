"""A picture or film has a name that a stick, or Windows, does not keep.

FAT can't tell `Plate.jpg` from `plate.jpg` and refuses some characters; Windows has no file `con.png`. Copy tools say
nothing: the picture is missing on the technician's screen only.

Source: Microsoft, "Naming Files, Paths, and Namespaces"; FAT32 specification.
"""

from collections.abc import Iterator

from guidebuild.guide.inside import pictures_in
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category
from guidebuild.source.portable import bad_name
from guidebuild.source.said import Said

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{why}"

HELP = "rename the file: a-z, 0-9, - and _ only, as in `plug-plate.jpg`"


def check(proof: Proof) -> Iterator[Hit]:
    twins: dict[str, str] = {}
    told: set[str] = set()
    for said, path in _files(proof):
        if path in told:
            continue
        told.add(path)
        whys = list(bad_name(path.rpartition("/")[2]))
        twin = twins.setdefault(path.casefold(), path)
        if twin != path:
            whys.append(f"a stick can't tell `{said.text}` from `{twin.rpartition('/')[2]}`")
        for why in whys[:1]:
            yield Hit(said.span, {"why": why})


def _files(proof: Proof) -> Iterator[tuple[Said, str]]:
    for picture in pictures_in(proof.guide):
        yield picture.file, picture.path
    for view in proof.device.views.values():
        if view.file is not None:
            yield view.file, f"{proof.device.folder}/{view.file.text}"
