"""Random edits of a guide: no valid translation is lost, no outdated caution is fresh, each change has its class."""

import tempfile
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from guidebuild.guide.guide import Guide
from guidebuild.read.content import read_content
from guidebuild.translate.catalogue.apply import Shown, Translator
from guidebuild.translate.catalogue.merge import merged
from guidebuild.translate.po.entry import Catalogue
from guidebuild.translate.po.writer import write_po
from guidebuild.translate.segments.of_guide import guide_texts
from guidebuild.translate.segments.slots import Slots
from guidebuild.translate.segments.take import segments

RECORD = """\
device: larch-p2
name: Larch P2
base: frame
parts: {frame: Frame, cover: Cover}
"""
HEAD = "---\ntitle: Look at it\ndevice: larch-p2\ngoal: {inspect: cover}\n---\n\nWhat you get.\n\n# Look\n"
NOTHING = Catalogue({}, (), ())


@dataclass(frozen=True)
class Line:
    """A sentence of the test's guide: its number never changes, whatever becomes of its words."""

    number: int
    words: str
    edit: str = ""

    def __str__(self) -> str:
        return self.words


@dataclass(frozen=True)
class Part:
    """A step: its id stands in the file, so that a new title is a new title only."""

    number: int
    title: str
    level: str
    hazard: Line
    lines: tuple[Line, ...] = field(default=())

    def markdown(self) -> str:
        caution = f"```caution\n{self.level}: {self.hazard}\navoid: Mind the edge of part {self.number}.\n```"
        block = f"```step\nid: part-{self.number}\n```"
        return "\n\n".join([f"## {self.title}", block, caution, *map(str, self.lines)])


def first(count: int) -> list[Part]:
    """A guide of some steps in which no sentence stands twice."""
    return [
        Part(
            number,
            f"Open part {number}",
            "warning",
            Line(number * 100, f"The spring {number}0 can hit the hand."),
            tuple(
                Line(
                    number * 100 + k,
                    f"Lift edge {number} of part {k} by {number}{k} mm and hold it.",
                )
                for k in range(1, 4)
            ),
        )
        for number in range(1, count + 1)
    ]


CHANGES: dict[str, Callable[[str], str]] = {
    "cosmetic": lambda words: words.replace(" and hold", ", and hold").replace(
        " can hit", "  can hit"
    ),
    "wording": lambda words: words.replace("hold", "turn").replace(
        "hit the hand", "jump at the eye"
    ),
    "number": lambda words: words.replace(" by ", " by 7").replace("spring ", "spring 7"),
    "unit": lambda words: words.replace(" mm ", " cm "),
    "negation": lambda words: words.replace("Lift", "Do not lift").replace(
        "can hit", "can not hit"
    ),
}


def guide_of(parts: list[Part]) -> Guide:
    with tempfile.TemporaryDirectory() as name:
        root = Path(name)
        for path, text in {
            "devices/larch-p2/device.yaml": RECORD,
            "guides/larch-p2/look.md": HEAD
            + "\n"
            + "\n\n".join(part.markdown() for part in parts)
            + "\n",
        }.items():
            (root / path).parent.mkdir(parents=True)
            (root / path).write_text(text)
        content, _ = read_content(root)
        return content.guides[0].guide


def translated(catalogue: Catalogue) -> Catalogue:
    entries = [replace(entry, translations=(f"T[{entry.source}]",)) for entry in catalogue.entries]
    return replace(catalogue, entries=tuple(entries))


def fresh(parts: list[Part]) -> Catalogue:
    return translated(merged(segments(guide_of(parts)), NOTHING, "en", {}))


@st.composite
def edited(draw: st.DrawFn) -> tuple[list[Part], list[Part]]:
    """A guide before and after some edits, at most one to a sentence."""
    before = first(draw(st.integers(2, 4)))
    after = list(before)
    for _ in range(draw(st.integers(1, 4))):
        which = draw(st.integers(0, len(after) - 1))
        part = after[which]
        match draw(st.sampled_from(["move", "insert", "delete", "retitle", "level", *CHANGES])):
            case "move":
                after.insert(draw(st.integers(0, len(after) - 1)), after.pop(which))
            case "insert":
                new = Line(
                    9000 + draw(st.integers(0, 999)),
                    f"Brush it {draw(st.integers(20, 99))} times.",
                    "new",
                )
                place = draw(st.integers(0, len(part.lines)))
                lines = (*part.lines[:place], new, *part.lines[place:])
                after[which] = replace(part, lines=lines)
            case "delete" if part.lines:
                after[which] = replace(part, lines=part.lines[:-1])
            case "retitle":
                after[which] = replace(part, title=f"Undo {part.title}")
            case "level":
                after[which] = replace(part, level="danger")
            case edit if edit in CHANGES and part.lines:
                index = draw(st.integers(-1, len(part.lines) - 1))
                line = part.lines[index] if index >= 0 else part.hazard
                words = CHANGES[edit](line.words)
                if line.edit or words == line.words:
                    continue
                new = replace(line, words=words, edit=edit)
                if index < 0:
                    after[which] = replace(part, hazard=new)
                else:
                    lines = (*part.lines[:index], new, *part.lines[index + 1 :])
                    after[which] = replace(part, lines=lines)
            case _:
                pass
    return before, after


def written(part: Part) -> list[Line]:
    return [part.hazard, *part.lines]


@settings(max_examples=150)
@given(edited())
def test_what_still_holds_is_kept_and_what_changed_has_the_class_of_its_edit(
    guides: tuple[list[Part], list[Part]],
) -> None:
    before, after = guides
    old = {line.number: line.words for part in before for line in written(part)}
    levels = {part.number: part.level for part in before}
    guide = guide_of(after)
    entries = {
        entry.source: entry for entry in merged(segments(guide), fresh(before), "en", {}).entries
    }
    for part in after:
        for line in written(part):
            entry = entries[line.words]
            raised = line is part.hazard and part.level != levels[part.number]
            if (
                line.edit == "new"
            ):  # where a sentence went at the same place, this may be taken for it
                assert entry.fuzzy or entry.translations == ("",)
            elif line.edit in ("", "cosmetic") and not raised:
                assert entry.translations == (f"T[{old[line.number]}]",)
                assert not entry.fuzzy
            elif any(entry.translations):
                assert entry.fuzzy
                if entry.previous.source != old[line.number]:
                    # taken for a neighbour: only where as many sentences came as went beside it
                    assert len(written(part)) < 4 or any(one.edit == "new" for one in part.lines)
                    continue
                classes = next(note for note in entry.notes if note.startswith("changed: "))
                wanted = [line.edit] if line.edit not in ("", "cosmetic") else []
                for one in [*wanted, *(["signal word"] if raised else [])]:
                    assert one in classes
                if not raised:
                    assert [one.split(" ")[0] for one in classes[9:].split("; ")] == wanted


def in_language(guide: Guide, translator: Translator) -> Guide:
    translator.learn(segments(guide))
    return guide_texts(guide, Slots(translator))


@settings(max_examples=60)
@given(edited())
def test_an_outdated_caution_number_or_negation_never_looks_fresh(
    guides: tuple[list[Part], list[Part]],
) -> None:
    before, after = guides
    guide = guide_of(after)
    catalogue = fresh(before)
    translator = Translator({guide.path: catalogue}, "en")
    told = in_language(guide, translator)
    stale = {one.source: one.shown for one in translator.stale.values()}
    for part in after:
        hazard = part.hazard.words
        if part.hazard.edit not in ("", "cosmetic") or part.level == "danger":
            assert stale[hazard] in (Shown.SOURCE_FIRST, Shown.MISSING)
        for line in part.lines:
            if line.edit in ("number", "unit", "negation"):
                assert stale[line.words] in (Shown.SOURCE_FIRST, Shown.MISSING)
            elif line.edit == "wording":
                assert line.words in stale
    assert len(told.steps) == len(guide.steps)


def test_an_inserted_paragraph_changes_no_line_of_any_other_entry() -> None:
    before = first(3)
    part = before[1]
    new = Line(1, "Brush it.")
    after = [before[0], replace(part, lines=(part.lines[0], new, *part.lines[1:])), before[2]]
    old = write_po(fresh(before)).split("\n\n")[1:]
    now = write_po(merged(segments(guide_of(after)), fresh(before), "en", {})).split("\n\n")[1:]
    assert [block.strip() for block in old] == [
        block.strip() for block in now if "Brush" not in block
    ]


def test_a_retitled_step_without_an_id_keeps_its_translations() -> None:
    before = first(2)
    texts = segments(guide_of(before))
    catalogue = translated(merged(texts, NOTHING, "en", {}))
    moved = [replace(one, place=one.place.replace("part-1", "another-name")) for one in texts]
    after = merged(moved, catalogue, "en", {})
    assert all(entry.translations[0] == f"T[{entry.source}]" for entry in after.entries)
    assert not any(entry.fuzzy or entry.obsolete for entry in after.entries)


def test_what_is_gone_from_the_source_stays_at_the_end_of_the_catalogue() -> None:
    before = first(2)
    after = merged(segments(guide_of(before[:1])), fresh(before), "en", {})
    gone = [entry for entry in after.entries if entry.obsolete]
    assert {entry.source for entry in gone} >= {line.words for line in before[1].lines}
    again = merged(segments(guide_of(before)), after, "en", {})
    assert not any(entry.obsolete or not entry.translations[0] for entry in again.entries)


@pytest.mark.parametrize("steps", [1, 3])
def test_a_guide_in_its_own_language_is_the_guide(steps: int) -> None:
    guide = guide_of(first(steps))
    translator = Translator({guide.path: NOTHING}, "en")
    assert in_language(guide, translator) == guide
    assert len(translator.stale) == len(segments(guide))
