"""Small cases of bench practice: correct work is silent, each real mistake is found once, where it is made."""

import re
import shutil
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

from guidebuild.device.states import word_for
from guidebuild.proof.mistake import Ending, Parting, Unmet
from guidebuild.proof.proof import Proof
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content
from guidebuild.source.span import Span

CASES = Path(__file__).parent / "cases"
FILES = sorted(path for path in CASES.glob("*/*.md"))


@dataclass(frozen=True, order=True)
class Noted:
    """What is found at a line (of the case's own file; 0: at no line)."""

    line: int
    words: str


def without_notes(text: str) -> tuple[str, list[Noted], list[int]]:
    """The guide as it is read, the notes, and for each of its lines the line in the case's file."""
    kept: list[str] = []
    notes: list[Noted] = []
    origin: list[int] = []
    for number, line in enumerate(text.splitlines(), 1):
        note = re.fullmatch(r"\s*%% (.*)", line)
        if note:
            notes.append(Noted(origin[-1] if origin else 0, note[1].strip()))
        else:
            kept.append(line)
            origin.append(number)
    return "\n".join(kept) + "\n", notes, origin


@pytest.fixture(scope="session")
def read_device(tmp_path_factory: pytest.TempPathFactory) -> Callable[[Path], dict[str, Proof]]:
    """Reads a device's folder as a content folder, once."""
    known: dict[Path, dict[str, Proof]] = {}

    def read(folder: Path) -> dict[str, Proof]:
        if folder not in known:
            known[folder] = _read(folder, tmp_path_factory.mktemp(folder.name))
        return known[folder]

    return read


def _read(folder: Path, root: Path) -> dict[str, Proof]:
    (root / "devices" / folder.name).mkdir(parents=True)
    (root / "guides" / folder.name).mkdir(parents=True)
    shutil.copy(folder / "device.yaml", root / "devices" / folder.name / "device.yaml")
    if (folder / "kits").is_dir():
        shutil.copytree(folder / "kits", root / "kits")
    for case in folder.glob("*.md"):
        text, _, _ = without_notes(case.read_text(encoding="utf-8"))
        (root / "guides" / folder.name / case.name).write_text(text, encoding="utf-8")
    content, findings = read_content(root)
    assert not findings, [
        f"{one.span.source.path}:{one.span.line}: {one.message}" for one in findings
    ]
    return {one.guide.id: prove(one.guide, one.device) for one in content.guides}


def found(proof: Proof, origin: list[int]) -> Iterator[Noted]:
    """What the walk found, in the words of the notes."""
    for unmet in proof.unmet:
        blames = f" because of {', '.join(unmet.blames)}" if unmet.blames else ""
        after = f", after {unmet.after.id}" if unmet.after else ""
        words = f"{unmet.need.value}: {unmet.thing}{blames}{after}"
        yield Noted(_line(unmet.span, origin), words + told(proof, unmet))
    for parting in proof.partings:
        kind = proof.device.things[parting.thing].kind
        first, second = word_for(kind, parting.first), word_for(kind, parting.second)
        words = f"parting: {parting.thing} {first} or {second}"
        yield Noted(_line(parting.span, origin), words + told(proof, parting))
    for ending in proof.endings:
        state = word_for(proof.device.things[ending.thing].kind, ending.found)
        because = "" if ending.because == "state" else f", {ending.because}"
        after = f", after {ending.after.id}" if ending.after else ""
        words = f"end: {ending.thing} {state}{because}{after}"
        span = ending.last.span if ending.last else None
        yield Noted(_line(span, origin), words + told(proof, ending))


def told(proof: Proof, one: Unmet | Parting | Ending) -> str:
    """`, only when …`, or nothing where it is so in every configuration that shows the step."""
    shown = None
    if not isinstance(one, Ending):
        shown = next(p.shown for p in proof.passages if p.step is one.step)
    words = proof.configurations.tell(one.where, shown).words
    return f", {words}" if words else ""


def _line(span: Span | None, origin: list[int]) -> int:
    return origin[span.line - 1] if span else 0


@pytest.mark.parametrize("case", FILES, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_the_walk_finds_just_what_is_noted(
    case: Path, read_device: Callable[[Path], dict[str, Proof]]
) -> None:
    _, notes, origin = without_notes(case.read_text(encoding="utf-8"))
    proof = read_device(case.parent)[case.stem]
    assert sorted(set(found(proof, origin))) == sorted(notes)


@pytest.mark.parametrize("case", FILES, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_a_case_is_named_by_what_it_is(case: Path) -> None:
    _, notes, _ = without_notes(case.read_text(encoding="utf-8"))
    assert case.name.startswith("wrong-" if notes else "right-")


def test_half_of_the_cases_are_correct_work() -> None:
    right = [case for case in FILES if case.name.startswith("right-")]
    assert len(FILES) >= 60
    assert 0.4 <= len(right) / len(FILES) <= 0.6
