"""Random edits of a guide whose sentences are numbered, so that a test knows what became of each.

`python -m tests.translate.edits 2000` makes so many and says, for each kind of edit, what the catalogue made of it.
"""

import sys
import tempfile
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path
from random import Random

from guidebuild.guide.guide import Guide
from guidebuild.read.content import read_content
from guidebuild.translate.catalogue.merge import merged
from guidebuild.translate.po.entry import Catalogue, Entry
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
    """A step. Where its id stands in the file a new title is a new title only, else it is a new id too."""

    number: int
    title: Line
    level: str
    hazard: Line
    lines: tuple[Line, ...] = ()
    named: bool = True

    def markdown(self) -> str:
        """The step as its author writes it."""
        caution = f"```caution\n{self.level}: {self.hazard}\navoid: Mind the edge of part {self.number}.\n```"
        block = [f"```step\nid: part-{self.number}\n```"] if self.named else []
        return "\n\n".join([f"## {self.title}", *block, caution, *map(str, self.lines)])

    @property
    def written(self) -> tuple[Line, ...]:
        """Every sentence of it that an edit may change."""
        return self.title, self.hazard, *self.lines


def part(number: int, named: bool = True) -> Part:
    """A step in which no sentence stands that stands anywhere else."""
    lines = (f"Lift edge {number} of part {k} by {number}{k} mm and hold it." for k in range(1, 4))
    return Part(
        number,
        Line(number * 100, f"Open part {number}"),
        "warning",
        Line(number * 100 + 50, f"The spring {number}0 can hit the hand."),
        tuple(Line(number * 100 + k, words) for k, words in enumerate(lines, start=1)),
        named,
    )


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
STEPS = ("move", "insert-step", "delete-step", "retitle", "signal word")
SENTENCES = ("insert", "delete", *CHANGES)


def guide_of(parts: list[Part]) -> Guide:
    """The steps, read as a guide."""
    with tempfile.TemporaryDirectory() as name:
        root = Path(name)
        body = "\n\n".join(one.markdown() for one in parts)
        for path, text in {
            "devices/larch-p2/device.yaml": RECORD,
            "guides/larch-p2/look.md": f"{HEAD}\n{body}\n",
        }.items():
            (root / path).parent.mkdir(parents=True)
            (root / path).write_text(text)
        return read_content(root)[0].guides[0].guide


def translated(catalogue: Catalogue) -> Catalogue:
    """Each text's translation says whose it is."""
    entries = [replace(entry, translations=(f"T[{entry.source}]",)) for entry in catalogue.entries]
    return replace(catalogue, entries=tuple(entries))


def catalogue_of(parts: list[Part], before: Catalogue = NOTHING) -> Catalogue:
    """The catalogue of the steps, merged with what was translated before."""
    return merged(segments(guide_of(parts)), before, "en", {})


def fresh(parts: list[Part]) -> Catalogue:
    """All of it translated."""
    return translated(catalogue_of(parts))


def edited(random: Random, named: bool | None = True) -> tuple[list[Part], list[Part], list[str]]:
    """A guide before and after one to four edits, at most one to a sentence, and the edits' names."""
    count = random.randint(2, 4)
    before = [
        part(n, random.random() < 0.5 if named is None else named) for n in range(1, count + 1)
    ]
    after, done = list(before), []
    for _ in range(random.randint(1, 4)):
        edit = random.choice((*STEPS, *SENTENCES))
        which = random.randrange(len(after))
        if _step(after, which, edit, random) or _sentence(after, which, edit, random):
            done.append(edit)
    return before, after, done


def _step(after: list[Part], which: int, edit: str, random: Random) -> bool:
    one = after[which]
    match edit:
        case "move":
            after.insert(random.randrange(len(after)), after.pop(which))
        case "insert-step":
            number = 10 + random.randrange(90)
            if any(other.number == number for other in after):
                return False
            new = part(number, one.named)
            lines = tuple(replace(line, edit="new") for line in new.lines)
            title, hazard = replace(new.title, edit="new"), replace(new.hazard, edit="new")
            after.insert(which, replace(new, title=title, hazard=hazard, lines=lines))
        case "delete-step" if len(after) > 1:
            after.pop(which)
        case "retitle" if not one.title.edit:
            title = replace(one.title, words=f"Undo {one.title}", edit="wording")
            after[which] = replace(one, title=title)
        case "signal word" if not one.hazard.edit:
            after[which] = replace(one, level="danger")
        case _:
            return False
    return True


def _sentence(after: list[Part], which: int, edit: str, random: Random) -> bool:
    one = after[which]
    if edit in ("insert", "delete"):
        place = random.randint(0, len(one.lines))
        gone = edit == "delete"
        if gone and place == len(one.lines):
            return False
        new = Line(
            9000 + random.randrange(10**6), f"Brush it {random.randint(20, 10**6)} times.", "new"
        )
        lines = (*one.lines[:place], *(() if gone else (new,)), *one.lines[place + gone :])
        after[which] = replace(one, lines=lines)
        return True
    if edit not in CHANGES or not one.lines:
        return False
    index = random.randint(-1, len(one.lines) - 1)
    line = one.lines[index] if index >= 0 else one.hazard
    words = CHANGES[edit](line.words)
    if line.edit or words == line.words or (index < 0 and one.level == "danger"):
        return False
    new = replace(line, words=words, edit=edit)
    if index < 0:
        after[which] = replace(one, hazard=new)
    else:
        after[which] = replace(one, lines=(*one.lines[:index], new, *one.lines[index + 1 :]))
    return True


def classes_of(entry: Entry) -> list[str]:
    """The classes that a catalogue tells of a changed text: `number 1 → 2; negation`."""
    told = next((note[9:] for note in entry.notes if note.startswith("changed: ")), "")
    names = (*CHANGES, "signal word", "codes")
    return [next(name for name in names if one.startswith(name)) for one in told.split("; ") if one]


def what_became(before: list[Part], after: list[Part]) -> Counter[tuple[str, str]]:
    """(edit, what the catalogue made of it) -> how many sentences."""
    old = {line.number: line.words for one in before for line in one.written}
    levels = {one.number: one.level for one in before}
    entries = {
        entry.source: entry
        for entry in catalogue_of(after, fresh(before)).entries
        if not entry.obsolete
    }
    found: Counter[tuple[str, str]] = Counter()
    for one in after:
        for line in one.written:
            raised = line is one.hazard and one.level != levels.get(one.number, one.level)
            edit = "signal word" if raised else line.edit or "none"
            entry = entries[line.words]
            if not any(entry.translations):
                became = "to translate"
            elif not entry.fuzzy:
                mine = entry.translations[0] == f"T[{old.get(line.number)}]"
                became = "kept" if mine else "ANOTHER'S"
            elif entry.previous.source == old.get(line.number):
                became = "outdated: " + ", ".join(classes_of(entry))
            else:
                became = "outdated, taken for a neighbour"
            found[edit, became] += 1
    return found


def main(count: int) -> None:
    """The table."""
    total: Counter[tuple[str, str]] = Counter()
    edits: Counter[str] = Counter()
    for seed in range(count):
        before, after, done = edited(Random(seed), named=None)
        edits.update(done)
        total += what_became(before, after)
    print(f"{count} guides, {sum(edits.values())} edits:", dict(sorted(edits.items())))
    for (edit, became), number in sorted(total.items()):
        print(f"{number:7}  {edit:12}  {became}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 200)
