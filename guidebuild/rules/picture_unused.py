"""A picture lies in the content folder and no guide or record shows it.

Mostly its name is misspelt where it was meant, or a step went and left it behind.

Source: common practice, no source.
"""

from collections.abc import Iterator, Sequence

from guidebuild.guide.content import Content
from guidebuild.guide.inside import pictures_in
from guidebuild.guide.stills import stills_in
from guidebuild.proof.hit import Hit, Rule
from guidebuild.source.finding import Category
from guidebuild.source.span import Span
from guidebuild.source.text import Source

RULE = Rule(category=Category.TEXT)

MESSAGE = "no guide and no record shows `{name}`"

HELP = "show it in the step that it is for, or delete it"

_PICTURES = (".jpg", ".jpeg", ".png", ".webp", ".svg", ".gif", ".avif")


def gather(content: Content) -> tuple[frozenset[str], frozenset[str]]:
    """The pictures that lie there, and those that are shown."""
    shown = {picture.path for one in content.guides for picture in pictures_in(one.guide)}
    for device in content.devices.values():
        named = [view.file for view in device.views.values()]
        named += [device.identify.look if device.identify else None]
        named += [points.file for points in device.pictures.values()]
        shown |= {f"{device.folder}/{file.text}" for file in named if file is not None}
    shown |= stills_in(content.files)
    there = (path for path in content.files if path.startswith(("guides/", "devices/")))
    return frozenset(path for path in there if path.lower().endswith(_PICTURES)), frozenset(shown)


def check_gathered(gathered: Sequence[tuple[frozenset[str], frozenset[str]]]) -> Iterator[Hit]:
    there = frozenset().union(*(pair[0] for pair in gathered))
    shown = frozenset().union(*(pair[1] for pair in gathered))
    for path in sorted(there - shown):
        yield Hit(Span(Source(path, ""), 0, 0), {"name": path.rpartition("/")[2]})
