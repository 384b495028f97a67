"""One broken file in a folder that is right otherwise; what must be said is noted in it (`tests/rules/notes.py`)."""

import shutil
import tempfile
from dataclasses import dataclass
from pathlib import Path

from guidebuild.read.content import read_content
from guidebuild.source.finding import Finding
from tests.rules.notes import Note, at, cut, put_in

HERE = Path(__file__).parent
PLAIN = HERE / "plain"
PLACES = {
    "guide": "guides/larch-p2/{}.md",
    "shared": "guides/larch-p2/shared/make-safe.md",
    "record": "devices/larch-p2/device.yaml",
    "kit": "kits/larch-head.yaml",
    "settings": "guidebuild.yaml",
    "tools": "tools.yaml",
    "terms": "terms.yaml",
}


@dataclass(frozen=True)
class Broken:
    """`tests/hard/<what>/<name>`, put in the place of the file that it stands for."""

    path: Path

    @property
    def place(self) -> str:
        """Where it goes in the content folder."""
        return PLACES[self.path.parent.name].format(self.path.stem)

    @property
    def text(self) -> str:
        """The file with its notes."""
        return self.path.read_text(encoding="utf-8")

    def expected(self) -> list[Note]:
        """What must be said, and where."""
        return cut(self.text)[1]

    def findings(self) -> list[Finding]:
        """What the reader says of the whole folder."""
        with tempfile.TemporaryDirectory() as folder:
            root = Path(folder) / "content"
            shutil.copytree(PLAIN, root)
            if self.path.parent.name == "record":
                shutil.rmtree(root / "guides")
                shutil.rmtree(root / "kits")
            (root / self.place).write_text(cut(self.text)[0], encoding="utf-8")
            return read_content(root)[1]

    def found(self) -> list[Note]:
        """The same as notes."""
        return sorted(at(one.span, f"{one.rule}: {one.message}") for one in self.findings())

    def rewrite(self) -> None:
        """Put what is said now into the file; the difference is the review."""
        self.path.write_text(put_in(cut(self.text)[0], self.found()), encoding="utf-8")


def broken() -> list[Broken]:
    """All of them, in order."""
    return [Broken(path) for what in PLACES for path in sorted((HERE / what).iterdir())]
