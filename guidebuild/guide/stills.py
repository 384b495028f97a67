"""The stills of a film lie beside it: `<film>.jpg`, or `<film>-7s.jpg` for the piece that begins at 7 s."""

import re
from collections.abc import Iterable
from decimal import Decimal
from pathlib import PurePosixPath

FILMS = (".mp4", ".m4v", ".mov", ".webm")
STILLS = (".jpg", ".jpeg", ".png", ".webp")
_SECOND = re.compile(r"-\d+(\.\d+)?s$")


def second(time: Decimal) -> str:
    """`7`, `130.5`: a time as it stands in a name and in an address."""
    return f"{time.normalize():f}"


def stills_of(film: str, start: Decimal) -> tuple[tuple[str, ...], ...]:
    """The names that a piece's own still may have, then those of the whole film's."""
    stem = _stem(film)
    return tuple(
        tuple(f"{name}{one}" for one in STILLS) for name in (f"{stem}-{second(start)}s", stem)
    )


def stills_in(files: Iterable[str]) -> frozenset[str]:
    """Of all files those that are stills of a film among them."""
    known = frozenset(files)
    films = {_stem(path) for path in known if path.lower().endswith(FILMS)}
    pictures = (path for path in known if path.lower().endswith(STILLS))
    return frozenset(
        path for path in pictures if films & {_stem(path), _SECOND.sub("", _stem(path))}
    )


def _stem(path: str) -> str:
    return str(PurePosixPath(path).with_suffix(""))
