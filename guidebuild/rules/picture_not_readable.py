"""A picture or a view of the record can't be shown: damaged, of another kind, or larger than a page takes.

The page would stand there without it. What is larger than the limits would eat the memory of the machine that builds.

Source: common practice, no source; the limits are our own (64 MB; 120 million pixels as JPEG, 40 as PNG, 20 as WebP or
GIF; 2 MB and 5000 shapes as SVG).
"""

from collections.abc import Iterator

from guidebuild.guide.content import Content
from guidebuild.guide.inside import pictures_in
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category
from guidebuild.source.said import Said

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "the page can't show `{name}`: {why}"

HELP = "{do}"


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    device = proof.device
    shown = [(picture.path, picture.file) for picture in pictures_in(proof.guide)]
    for view in device.views.values():
        if view.file is not None:
            shown.append((f"{device.folder}/{view.file.text}", view.file))
    for path, file in shown:
        if path in content.unshown:
            yield _hit(file, *content.unshown[path])


def _hit(file: Said, why: str, do: str) -> Hit:
    return Hit(file.span, {"name": file.text, "why": why, "do": do})
