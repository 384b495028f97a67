"""Which files of the site are a guide's own: where only that guide changed, only these are made again."""

from collections.abc import Iterator, Mapping, Sequence

from guidebuild.draw.photo import Photo
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import pictures_in
from guidebuild.outputs.html.edition import Edition
from guidebuild.outputs.html.films import Films, film_path, pieces
from guidebuild.outputs.html.looks import look_path
from guidebuild.outputs.html.paths import guide_page, tray_page
from guidebuild.outputs.html.photos import photo_path
from guidebuild.outputs.html.pictured import Pictured
from guidebuild.proof.proof import Proof


def belonging(editions: Sequence[Edition], pictures: Pictured) -> dict[str, frozenset[str]]:
    """Content path of each guide -> the site paths that it may have; a file may be of several guides."""
    found: dict[str, frozenset[str]] = {}
    for edition in editions:
        for proof in edition.proofs:
            path = proof.guide.path
            pages = {guide_page(path, edition.language), tray_page(path, edition.language)}
            shown = {
                *_photos(proof.guide, pictures.photos),
                *_films(proof.guide, pictures.films),
                *_look(proof, pictures),
            }
            found[path] = found.get(path, frozenset()) | pages | shown
    return found


def _photos(guide: Guide, photos: Mapping[str, Photo]) -> Iterator[str]:
    for one in pictures_in(guide):
        if one.path in photos:
            for rendition in photos[one.path].renditions:
                yield photo_path(one.path, rendition)


def _films(guide: Guide, films: Films) -> Iterator[str]:
    for piece in pieces(guide):
        film = films.of(guide, piece)
        if film is not None:
            yield film_path(film.path)
            for still in film.stills.values():
                yield photo_path(still.path, still.file)


def _look(proof: Proof, pictures: Pictured) -> Iterator[str]:
    look = pictures.looks.get(look_path(proof.device))
    if look is not None and look.file is not None:
        yield photo_path(look.path, look.file)
