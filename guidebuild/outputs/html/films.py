"""The films of all guides: found once, copied bare of what a camera wrote into them, each with its stills.

A still is the poster, and what paper and a browser without films show.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import PurePosixPath

from guidebuild.draw.film_file import bare_film, film_size
from guidebuild.draw.photo import Rendition, photo
from guidebuild.guide.blocks.video import Video
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import items
from guidebuild.guide.stills import second, stills_of
from guidebuild.outputs.html.edition import Edition
from guidebuild.outputs.html.paths import portable
from guidebuild.outputs.html.photos import photo_path
from guidebuild.outputs.html.views import Load
from guidebuild.proof.proof import Proof

TYPES = {".mp4": "video/mp4", ".m4v": "video/mp4", ".mov": "video/mp4", ".webm": "video/webm"}
_WIDE = (16, 9)  # of a film whose head does not tell its size


@dataclass(frozen=True, slots=True)
class Still:
    """A picture of a film at its content path; one file of it serves as poster and on paper."""

    path: str
    file: Rendition


@dataclass(frozen=True, slots=True)
class Film:
    """`size` of the upright picture in pixels; `stills` by the second at which a piece begins, `""` for any."""

    path: str
    size: tuple[int, int]
    data: bytes = field(repr=False)
    stills: Mapping[str, Still]

    @property
    def type(self) -> str:
        """Its media type."""
        return TYPES[PurePosixPath(self.path).suffix.lower()]


@dataclass(frozen=True, slots=True)
class Films:
    """`captions`: film -> (language tag, WebVTT), the authors' own language first."""

    by_path: Mapping[str, Film] = field(default_factory=dict)
    captions: Mapping[str, Sequence[tuple[str, str]]] = field(default_factory=dict)

    def of(self, guide: Guide, piece: Video) -> Film | None:
        """The film of a piece; None where the file is missing or is no film, which the reader has told."""
        places = places_of(guide, piece)
        return next((self.by_path[path] for path in places if path in self.by_path), None)


def films_of(proofs: Sequence[Proof], load: Load, editions: Sequence[Edition]) -> Films:
    """The films that any guide shows, each read once."""
    found: dict[str, Film] = {}
    for proof in proofs:
        for piece in pieces(proof.guide):
            film = _film(places_of(proof.guide, piece), load, found)
            if film is not None:
                found[film.path] = _with_stills(film, piece, load)
    captions = {path: tuple(_captions(path, editions)) for path in found}
    return Films(found, captions)


def pieces(guide: Guide) -> Iterator[Video]:
    """Every piece of a film that a guide shows."""
    return (one for step in guide.steps for one in items(step) if isinstance(one, Video))


def places_of(guide: Guide, piece: Video) -> tuple[str, ...]:
    """Where the film may lie: in the guide's own folder, the one that it lies in, then its devices'."""
    said = piece.file or guide.video
    if said is None:
        return ()
    path = said.span.source.path
    folders = (path.removesuffix(".md"), path.rpartition("/")[0])
    devices = (f"devices/{device.text}" for device in guide.devices)
    return tuple(f"{folder}/{said.text}" for folder in (*folders, *devices))


def film_files(films: Films) -> Iterator[tuple[str, bytes]]:
    """Every film and the files of its stills, at their site paths."""
    for film in films.by_path.values():
        yield film_path(film.path), bare_film(film.data)
        for still in film.stills.values():
            yield photo_path(still.path, still.file), still.file.data


def film_path(path: str) -> str:
    """`films/larch-p2/replace-the-print-head/free-the-head-flex.mp4`: one file for every language."""
    return "/".join(("films", *(portable(part) for part in PurePosixPath(path).parts[1:])))


def _film(places: Sequence[str], load: Load, known: Mapping[str, Film]) -> Film | None:
    for path in places:
        if path in known:
            return known[path]
        data = load(path) if PurePosixPath(path).suffix.lower() in TYPES else None
        if data is not None:
            return Film(path, film_size(data) or _WIDE, data, {})
    return None


def _with_stills(film: Film, piece: Video, load: Load) -> Film:
    """The film with the still of a piece, and the one of the whole film."""
    own, whole = stills_of(film.path, piece.start)
    stills = dict(film.stills)
    for at, names in ((second(piece.start), own), ("", whole)):
        if at not in stills:
            still = _still(names, load)
            stills |= {at: still} if still else {}
    return replace(film, stills=stills)


def _still(names: Sequence[str], load: Load) -> Still | None:
    """The first of these files that is a picture, if any is."""
    for name in names:
        data = load(name)
        made = photo(data) if data is not None else None
        if made is not None:
            files = [one for one in made.renditions if one.format == "jpg"]
            return Still(name, files[len(files) // 2])
    return None


def _captions(path: str, editions: Sequence[Edition]) -> Iterator[tuple[str, str]]:
    for edition in editions:
        captions = edition.content.captions.get(path)
        if captions:
            yield edition.language, captions
