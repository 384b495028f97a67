"""Where the schemas and themes lie: inside an installed wheel, or beside the package in a checkout."""

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent


def shipped(name: str) -> Path:
    """The folder `schema` or `themes` that came with this guidebuild."""
    installed = _PACKAGE / "_shipped" / name
    return installed if installed.is_dir() else _PACKAGE.parent / name
