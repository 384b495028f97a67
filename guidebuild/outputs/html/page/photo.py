"""A photograph in a step: its files, and over it the numbers of what the step works on."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal

from guidebuild.draw.photo import Photo
from guidebuild.draw.photo_marks import PhotoMarks, PhotoPoint, overlay_svg
from guidebuild.draw.svg import Point
from guidebuild.guide.blocks.points import Place, Points
from guidebuild.guide.inside import items
from guidebuild.guide.prose import Picture
from guidebuild.guide.step import Step
from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.photos import photo_path
from guidebuild.translate.messages.text import Mark, Text, joined, plain, text

_SHAPES = (1.9, 1.5, 1.2, 1.0, 0.75, 0.5)  # width to height; the style sheet has a class for each


@dataclass(frozen=True, slots=True)
class PhotoView:
    """`files`: (format, srcset); the last is the one that every browser reads, `src` its middle file.

    `overlay` is empty where nothing is marked. `shape` is the class by which the enlarged picture fits a screen.
    """

    files: tuple[tuple[str, str], ...]
    src: str
    width: int
    height: int
    alt: str
    overlay: str
    shape: str
    caption: Text


def photo_views(reading: Reading, step: Step, lines: Sequence[Line]) -> tuple[PhotoView, ...]:
    """The photographs of a step in the author's order, each with the free marks that follow it."""
    found: list[tuple[Picture, list[Points]]] = []
    for item in items(step):
        if isinstance(item, Picture):
            found.append((item, []))
        elif isinstance(item, Points) and found:
            found[-1][1].append(item)
    shown = ((one, marks, reading.photos.get(one.path)) for one, marks in found)
    return tuple(
        _view(reading, one, marks, photo, lines) for one, marks, photo in shown if photo is not None
    )


def _view(
    reading: Reading, picture: Picture, free: Sequence[Points], photo: Photo, lines: Sequence[Line]
) -> PhotoView:
    points = dict(_points(reading, picture, lines))
    marks = PhotoMarks(
        points=[PhotoPoint(reading.labels.of(key), at) for key, at in points.items()],
        here=[_at(place) for one in free for place in one.here],
        keep_out=[(_at(a), _at(b)) for one in free for a, b in one.keep_out],
        arrows=[[_at(place) for place in way] for one in free for way in one.arrow],
    )
    marked = bool(marks.points or marks.here or marks.keep_out or marks.arrows)
    overlay = overlay_svg(marks, photo.width, photo.height, "") if marked else ""
    return PhotoView(
        files=tuple(_files(reading, picture, photo)),
        src=_url(reading, picture, photo, len(photo.renditions) // 2),
        width=photo.width,
        height=photo.height,
        alt=plain(reading.author.words(picture.alt)),
        overlay=overlay,
        shape=_shape(photo, bool(overlay)),
        caption=_caption(reading, list(points)),
    )


def _points(
    reading: Reading, picture: Picture, lines: Sequence[Line]
) -> Iterator[tuple[str, Point]]:
    """What this step works on and the record has placed on the picture, by key."""
    device = reading.device
    for one in device.pictures.values():
        if picture.path.endswith(f"/{one.file.text}"):
            for key in dict.fromkeys(key for line in lines for key in line.things):
                place = one.points.get(device.things[key].id)
                if place is not None and reading.labels.of(key):
                    yield key, _at(place)


def _at(place: tuple[Decimal, Decimal] | Place) -> Point:
    return float(place[0]), float(place[1])


def _files(reading: Reading, picture: Picture, photo: Photo) -> Iterator[tuple[str, str]]:
    """WebP first where it pays; the browser takes the first that it reads."""
    for format in ("webp", "jpg", "svg"):
        files = [one for one in photo.renditions if one.format == format]
        if files:
            urls = (f"{reading.root}{photo_path(picture.path, one)} {one.width}w" for one in files)
            yield format, ", ".join(urls)


def _url(reading: Reading, picture: Picture, photo: Photo, n: int) -> str:
    plain_files = [one for one in photo.renditions if one.format != "webp"]
    return reading.root + photo_path(picture.path, plain_files[min(n, len(plain_files) - 1)])


def _shape(photo: Photo, marked: bool) -> str:
    """The widest class that is not wider than the picture, its numbers beside it included."""
    ratio = photo.width / photo.height
    if marked:
        ratio = 196 / (132 / ratio + 14)
    return f"r{next((one for one in _SHAPES if one <= ratio), _SHAPES[-1]) * 100:.0f}"


def _caption(reading: Reading, keys: Sequence[str]) -> Text:
    """`K plug plate. Screws 4, 5.`"""
    say, holes = reading.say, reading.labels.of_hole
    others = [reading.named(key) for key in keys if key not in holes]
    numbers = dict.fromkeys(reading.labels.of(key) for key in keys if key in holes)
    parts: list[Text] = []
    if others:
        parts.append(say("list.sentence", words=say.listed(others, "unit")))
    if numbers:
        marks = say.listed([text(number, Mark.REFERENCE) for number in numbers], "unit")
        count = sum(key in holes for key in keys)
        parts.append(say("picture.screws", count=count, numbers=marks))
    return joined(parts, " ")
