"""One fixture: a small content folder made of a guide and the record it needs, read and proved, one rule run."""

import re
import tempfile
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from guidebuild.build import rulebook, tell
from guidebuild.build.check import check
from guidebuild.build.pictures import with_pictures
from guidebuild.guide.content import Content
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content
from guidebuild.source.finding import Category, Finding
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from tests.rules.notes import Note, at, cut

HERE = Path(__file__).parent
# What is seen only when everything is checked, all rules and settings together.
OF_A_WHOLE_CHECK = {
    "allow-unknown",
    "allow-without-reason",
    "allow-not-needed",
    "too-many-configurations",
}
BESIDE = ("device.yaml", "kit.yaml", "guidebuild.yaml", "tools.yaml", "terms.yaml")
PICTURES = (".svg", ".png", ".jpg", ".jpeg", ".webp", ".mp4")
CAPTIONS = (".vtt", ".srt")
CATALOGUE = re.compile(r"(?P<file>.+)\.(?P<language>[a-z]{2})\.po")


@dataclass(frozen=True)
class Fixture:
    """`tests/rules/<rule>/<stem>.md`, and what lies beside it: its own file, the folder's, or the shared one."""

    path: Path

    @property
    def rule(self) -> str:
        """The rule that the folder is about."""
        return self.path.parent.name

    @property
    def is_bad(self) -> bool:
        """Whether it must have findings."""
        return self.path.stem.startswith("bad")

    def beside(self, name: str) -> Path:
        """`device.yaml` for this guide: `<stem>.device.yaml`, else the folder's, else the shared one."""
        own = self.path.with_name(f"{self.path.stem}.{name}")
        places = (own, self.path.with_name(name), HERE / name)
        return next(place for place in places if place.exists())

    @cached_property
    def places(self) -> dict[str, Path]:
        """Where each file goes in the content folder -> where it comes from."""
        device = _id(self.beside("device.yaml"), "device")
        found = {
            f"guides/{device}/{self.path.stem}.md": self.path,
            f"devices/{device}/device.yaml": self.beside("device.yaml"),
            f"kits/{_id(self.beside('kit.yaml'), 'kit')}.yaml": self.beside("kit.yaml"),
        }
        found |= {name: self.beside(name) for name in BESIDE[2:]}
        text = self.path.read_text(encoding="utf-8")
        for shared in sorted(self.path.parent.glob("shared/*.md")):
            if f"shared/{shared.name}" not in text:
                continue
            found[f"guides/{device}/shared/{shared.name}"] = shared
        for picture in sorted(self.path.parent.iterdir()):
            if picture.suffix in CAPTIONS and picture.stem in text:
                found[f"guides/{device}/{self.path.stem}/{picture.name}"] = picture
            if picture.suffix in PICTURES:
                found[f"guides/{device}/{self.path.stem}/{picture.name}"] = picture
                found[f"devices/{device}/{picture.name}"] = picture
        found |= dict(self._catalogues(device, frozenset(found)))
        return found

    def _catalogues(self, device: str, captions: frozenset[str]) -> Iterator[tuple[str, Path]]:
        """`<stem>.de.po` is the guide's in German, `device.de.po` the record's, `<film>.de.po` its captions'."""
        for path in sorted(self.path.parent.glob("*.po")):
            name = CATALOGUE.fullmatch(path.name)
            assert name, f"{path} is not named as in `bad-one.de.po`"
            places = {
                self.path.stem: f"guides/{device}/{self.path.stem}.po",
                "device": f"devices/{device}/device.po",
            }
            if f"guides/{device}/{self.path.stem}/{name['file']}.vtt" in captions:
                places[name["file"]] = f"guides/{device}/{self.path.stem}/{name['file']}.po"
            if name["file"] in places:
                yield f"translations/{name['language']}/{places[name['file']]}", path

    def expected(self) -> dict[Path, list[Note]]:
        """The notes in the guide and in what lies beside it, by file."""
        return {
            path: notes
            for place, path in self.places.items()
            if path.suffix not in PICTURES
            and (notes := cut(path.read_text(encoding="utf-8"))[1]) is not None
        }

    def found(self) -> tuple[dict[Path, list[Note]], list[Finding]]:
        """What the rule says, by file, and what else the reader had to say."""
        with tempfile.TemporaryDirectory() as folder:
            self.lay_out(Path(folder))
            content, read = read_content(Path(folder))
            mine = [one for one in read if one.rule == self.rule]
            others = [one for one in read if one.rule != self.rule]
            if self.rule in OF_A_WHOLE_CHECK or self._is_about_translation():
                mine += [one for one in check(Path(folder)).findings if one.rule == self.rule]
            elif not mine:
                mine += findings_of(self.rule, with_pictures(Path(folder), content))
        return self._notes(mine), others

    def content(self) -> Content:
        """The fixture as read, whatever the reader had to say."""
        with tempfile.TemporaryDirectory() as folder:
            self.lay_out(Path(folder))
            return read_content(Path(folder))[0]

    def lay_out(self, folder: Path) -> None:
        for name, path in self.places.items():
            target = folder / name
            target.parent.mkdir(parents=True, exist_ok=True)
            if path.suffix in PICTURES:
                target.write_bytes(path.read_bytes())
            else:
                target.write_text(cut(path.read_text(encoding="utf-8"))[0], encoding="utf-8")

    def _notes(self, findings: list[Finding]) -> dict[Path, list[Note]]:
        """Related places in a record that other fixtures share are not noted there."""
        notes: dict[Path, list[Note]] = {path: [] for path in self.expected()}
        for one in findings:
            told = one.told.words if one.told else ""
            self._add(notes, one.span, f"{one.rule}: {one.message}", told)
            for other in one.related:
                if self._is_own(self.places[other.span.source.path]):
                    self._add(notes, other.span, f"see: {other.words}")
        return {path: sorted(set(found)) for path, found in notes.items()}

    def _is_about_translation(self) -> bool:
        return rulebook.entry(self.rule).category is Category.TRANSLATION

    def _is_own(self, path: Path) -> bool:
        return path.parent != HERE and path.name.startswith(f"{self.path.stem}.")

    def _add(self, notes: dict[Path, list[Note]], span: Span, words: str, told: str = "") -> None:
        path = self.places[span.source.path]
        if path.suffix in PICTURES:  # a picture has no lines: noted at the head of the guide
            path, span = self.path, Span(Source(path.name, "---"), 0, 3)
        notes[path].append(at(span, words, told))


def findings_of(name: str, content: Content) -> Iterator[Finding]:
    """What one rule says of everything that was read."""
    rule = rulebook.entry(name)
    for one in content.guides if rule.check is not None else ():
        proof = prove(one.guide, one.device)
        for hit in rule.hits(proof, content):
            yield tell.finding(rule, hit, proof.configurations)
    yield from (tell.finding(rule, hit) for hit in rule.over_all([rule.gathered(content)]))


def _id(path: Path, key: str) -> str:
    found = re.search(rf"^{key}: *(\S+)", path.read_text(encoding="utf-8"), re.MULTILINE)
    assert found, f"{path} has no `{key}:`"
    return found[1]


def fixtures() -> list[Fixture]:
    """All of them, in order."""
    return [
        Fixture(path)
        for path in sorted(HERE.glob("*/*.md"))
        if path.stem.partition("-")[0] in ("bad", "good")
    ]
