"""What a camera or a pen made for the guides: photographs, films, and pictures of labels, each made ready once."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from guidebuild.draw.photo import Photo
from guidebuild.outputs.html.edition import Edition
from guidebuild.outputs.html.films import Films, film_files, films_of
from guidebuild.outputs.html.looks import Look, look_files, looks_of
from guidebuild.outputs.html.photos import photo_files, photographs
from guidebuild.outputs.html.views import Load
from guidebuild.proof.proof import Proof


@dataclass(frozen=True, slots=True)
class Pictured:
    """`photos` and `looks` by content path."""

    photos: Mapping[str, Photo]
    films: Films
    looks: Mapping[str, Look]

    def files(self) -> Iterator[tuple[str, bytes]]:
        """All that becomes a file, at its site path."""
        yield from photo_files(self.photos)
        yield from film_files(self.films)
        yield from look_files(self.looks)


def pictured(proofs: Sequence[Proof], load: Load, editions: Sequence[Edition]) -> Pictured:
    """Of all guides, for all languages."""
    return Pictured(
        photographs(proofs, load), films_of(proofs, load, editions), looks_of(proofs, load)
    )
