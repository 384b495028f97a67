"""Small content folders for tests: files by their place in it."""

import tempfile
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

from guidebuild.guide.content import Content
from guidebuild.read.content import read_content
from guidebuild.source.finding import Finding


@contextmanager
def laid_out(files: Mapping[str, str]) -> Iterator[Path]:
    """A folder with these files, for as long as it is needed."""
    with tempfile.TemporaryDirectory() as folder:
        for place, text in files.items():
            path = Path(folder) / place
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8")
        yield Path(folder)


def read(files: Mapping[str, str]) -> tuple[Content, list[Finding]]:
    """What the reader makes of these files."""
    with laid_out(files) as root:
        return read_content(root)
