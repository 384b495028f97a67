"""One file put in place as a whole: written beside, then renamed, so that no stop leaves half of it."""

from pathlib import Path

from guidebuild.build.trouble import Trouble


def put_whole(path: Path, data: bytes) -> None:
    """Make `path` hold `data`; its folder is made where it is missing. Trouble where it can't be written.

    The name beside it is always the same, so that a second run clears up after one that was cut off.
    """
    beside = path.with_name(path.name + ".part")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        try:
            beside.write_bytes(data)
            beside.replace(path)
        finally:
            beside.unlink(missing_ok=True)
    except OSError as error:
        raise Trouble(f"Can't write {path}: {error.strerror}.") from error
