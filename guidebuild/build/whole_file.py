"""One file put in place as a whole: written beside, then renamed, so that no stop leaves half of it."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from guidebuild.build.trouble import Trouble


@contextmanager
def beside(path: Path, name: str) -> Iterator[Path]:
    """A file of this name in the same folder: it takes the place of `path` at the end, or it is gone."""
    written = path.with_name(name)
    try:
        yield written
        written.replace(path)
    finally:
        written.unlink(missing_ok=True)


def put_whole(path: Path, data: bytes) -> None:
    """Make `path` hold `data`; its folder is made where it is missing. Trouble where it can't be written.

    The name beside it is always the same, so that a second run clears up after one that was cut off.
    """
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        with beside(path, path.name + ".part") as file:
            file.write_bytes(data)
    except OSError as error:
        raise Trouble(f"Can't write {path}: {error.strerror}.") from error
