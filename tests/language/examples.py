"""The examples in this folder's Markdown files: a block of what is written, a block `reads` of what is read.

The name of the first block says what it is a piece of: `step` (what stands under a step's heading), `body` (what
follows the front matter), `front` (lines of front matter), `record`, `kit`, `condition`.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from guidebuild.device.option import Origin
from guidebuild.guide.content import Content
from tests.language.folders import read
from tests.language.test_samples import samples
from tests.language.told import place, told

HERE = Path(__file__).parent
GUIDE, RECORD, KIT = (
    "guides/larch-p2/example.md",
    "devices/larch-p2/device.yaml",
    "kits/larch-head.yaml",
)
FRONT = "title: An example\ndevice: larch-p2\ngoal: {inspect: frame}\nkits: larch-head\n"
_PAIR = re.compile(r"^````(\w+)\n(.*?)^````\n+````reads\n(.*?)^````$", re.S | re.M)


@dataclass(frozen=True)
class Example:
    """What is written, and what is read of it."""

    file: Path
    line: int
    kind: str
    written: str
    expected: str

    def found(self) -> str:
        """What the reader makes of it, and what it finds wrong."""
        files = samples() | {GUIDE: f"---\n{FRONT}---\n"}
        del files["guides/larch-p2/replace-the-print-head.md"]
        place_, before, after = self._framed()
        files[place_] = before + self.written + after
        content, findings = read(files)
        first = before.count("\n") + 1
        mine = [one for one in findings if one.span.source.path == place_]
        values = told(self._part(content), first)
        said = [f"! {one.rule} ({place(one.span, first)}): {one.message}" for one in mine]
        return "\n".join([values, *said]).strip() + "\n"

    def _framed(self) -> tuple[str, str, str]:
        match self.kind:
            case "record":
                return RECORD, "", ""
            case "kit":
                return KIT, "", ""
            case "front":
                return GUIDE, f"---\n{FRONT}", "---\n"
            case "body":
                return GUIDE, f"---\n{FRONT}---\n", ""
            case "condition":
                return GUIDE, f"---\n{FRONT}---\n# A stage\n## A step\n```step\nwhen: ", "```\n"
            case _:
                return GUIDE, f"---\n{FRONT}---\n# A stage\n## A step\n", ""

    def _part(self, content: Content) -> object:
        guide = (
            next(one.guide for one in content.guides if one.guide.path == GUIDE)
            if content.guides
            else None
        )
        match self.kind:
            case "record":
                device = content.devices["larch-p2"]
                return tuple(thing for thing in device.things.values() if thing.id != "device")
            case "kit":
                return content.kits["larch-head"]
            case "front":
                keys = re.findall(r"^([\w-]+):", self.written, re.M)
                return {key: self._field(guide, key.replace("-", "_")) for key in keys}
            case "body":
                assert guide is not None
                return (*guide.intro, *guide.stages)
            case "condition":
                assert guide is not None
                return guide.steps[0].when or ()
            case _:
                assert guide is not None
                return guide.steps[0].flow

    def _field(self, guide: object, name: str) -> object:
        """A field of the guide; of its options only its own."""
        value = getattr(guide, "allows" if name == "allow" else name)
        return (
            tuple(one for one in value if one.origin is Origin.GUIDE)
            if name == "options"
            else value
        )


def examples() -> Iterator[Example]:
    """Each pair of blocks in each file."""
    for path in sorted(HERE.glob("*.md")):
        text = path.read_text(encoding="utf-8")
        for found in _PAIR.finditer(text):
            yield Example(path, text.count("\n", 0, found.start()) + 1, *found.groups())


def rewrite(path: Path) -> None:
    """Put what is read now into a file; the difference is the review."""
    text = path.read_text(encoding="utf-8")

    def pair(found: re.Match[str]) -> str:
        new = Example(path, 0, *found.groups()).found()
        return f"````{found[1]}\n{found[2]}````\n\n````reads\n{new}````"

    path.write_text(_PAIR.sub(pair, text), encoding="utf-8")
