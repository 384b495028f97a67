"""A catalogue file into entries, however a tool has wrapped or ordered it."""

import re
from dataclasses import dataclass, field

from guidebuild.translate.fault import Fault
from guidebuild.translate.po.entry import Catalogue, Entry, Previous
from guidebuild.translate.po.quoting import unquote

_KEYWORD = re.compile(r"(msgctxt|msgid_plural|msgid|msgstr(?:\[(\d{1,2})\])?)\s*(?=\")")
LARGEST = 64 * 2**20  # characters


@dataclass(slots=True)
class _Draft:
    """An entry while its lines come in."""

    line: int = 0
    strings: dict[str, list[str]] = field(default_factory=dict)
    before: dict[str, list[str]] = field(default_factory=dict)
    comments: dict[str, list[str]] = field(default_factory=dict)
    obsolete: bool = False
    last: list[str] | None = None  # the string that a bare quoted line goes on with

    @property
    def complete(self) -> bool:
        """A line that may begin an entry begins the next one from here on."""
        return any(name.startswith("msgstr") for name in self.strings)


def read_po(text: str) -> tuple[Catalogue, list[Fault]]:
    """The catalogue, and what is wrong in the file: line, column, rule. Reading goes on behind a fault."""
    if len(text) > LARGEST:
        return Catalogue({}, (), ()), [Fault(1, 1, "too-large", f"more than {LARGEST} characters")]
    reading = _Reading()
    for number, line in enumerate(text.removeprefix("\ufeff").split("\n"), 1):
        reading.take(line.rstrip("\r"), number)
    reading.close()
    return _catalogue(reading.entries), reading.faults


class _Reading:
    def __init__(self) -> None:
        self.draft = _Draft()
        self.entries: list[Entry] = []
        self.faults: list[Fault] = []
        self.seen: set[tuple[str | None, str, bool]] = set()

    def fault(self, line: int, column: int, rule: str, message: str) -> None:
        self.faults.append(Fault(line, column, rule, message))

    def take(self, line: str, number: int) -> None:
        stripped = line.strip()
        if not stripped:
            self.draft.last = None
        elif stripped.startswith("#~"):
            self._obsolete(line, number)
        elif stripped.startswith("#|"):
            self._begin_if_complete()
            self._string(line, line.index("#|") + 2, number, self.draft.before)
        elif stripped.startswith("#"):
            self._begin_if_complete()
            mark, words = (
                (stripped[:2], stripped[2:]) if stripped[1:2] in ".:," else ("#", stripped[1:])
            )
            self.draft.comments.setdefault(mark, []).append(words.removeprefix(" "))
        else:
            self._string(line, 0, number, self.draft.strings)

    def _obsolete(self, line: str, number: int) -> None:
        start = line.index("#~") + 2
        rest = line[start:].lstrip()
        self._begin_if_complete(rest)
        self.draft.obsolete = True
        if rest.startswith("|"):
            self._string(line, line.index("|", start) + 1, number, self.draft.before)
        else:
            self._string(line, start, number, self.draft.strings)

    def _begin_if_complete(self, rest: str = "#") -> None:
        if self.draft.complete and not rest.startswith(('"', "msgstr")):
            self.close()

    def _string(self, line: str, start: int, number: int, into: dict[str, list[str]]) -> None:
        at = start + len(line[start:]) - len(line[start:].lstrip())
        keyword = _KEYWORD.match(line, at)
        if keyword:
            name = keyword[1]
            if name in ("msgctxt", "msgid") and into is self.draft.strings:
                self._begin_if_complete()
                into = self.draft.strings
            if name in into:
                self.fault(number, at + 1, "keyword-twice", f"`{name}` stands twice in one entry")
            self.draft.line = self.draft.line or number
            self.draft.last = into[name] = []
            at = keyword.end()
        elif not line[at:].startswith('"'):
            self.fault(number, at + 1, "line-not-readable", "this is no line of a catalogue")
            return
        elif self.draft.last is None:
            self.fault(
                number, at + 1, "string-without-keyword", "no keyword stands before this string"
            )
            return
        text, wrong = unquote(line[at:].rstrip())
        if wrong is not None:
            message = "the string is not closed, or an escape in it is not one"
            self.fault(number, at + wrong + 1, "string-not-readable", message)
        assert self.draft.last is not None
        self.draft.last.append(text)

    def close(self) -> None:
        """The entry is complete: keep it, or say what it lacks."""
        draft, self.draft = self.draft, _Draft()
        if not draft.strings:
            return
        if "msgid" not in draft.strings or not draft.complete:
            lacking = "msgid" if "msgid" not in draft.strings else "msgstr"
            self.fault(draft.line, 1, "keyword-missing", f"this entry has no `{lacking}`")
            return
        entry = _entry(draft)
        key = (entry.context, entry.source, entry.obsolete)
        if key in self.seen:
            self.fault(
                draft.line, 1, "entry-twice", "the same context and source stand above already"
            )
        self.seen.add(key)
        self.entries.append(entry)


def _entry(draft: _Draft) -> Entry:
    said = {name: "".join(parts) for name, parts in draft.strings.items()}
    before = {name: "".join(parts) for name, parts in draft.before.items()}
    forms = sorted((name for name in said if name.startswith("msgstr")), key=_form)
    listed = {mark: " ".join(draft.comments.get(mark, [])) for mark in ("#:", "#,")}
    return Entry(
        source=said["msgid"],
        translations=tuple(said[name] for name in forms),
        context=said.get("msgctxt"),
        plural=said.get("msgid_plural"),
        remarks=tuple(draft.comments.get("#", ())),
        notes=tuple(draft.comments.get("#.", ())),
        references=tuple(listed["#:"].split()),
        flags=tuple(
            flag.strip() for flag in listed["#,"].replace(" ", ",").split(",") if flag.strip()
        ),
        previous=Previous(before.get("msgctxt"), before.get("msgid"), before.get("msgid_plural")),
        obsolete=draft.obsolete,
        line=draft.line,
    )


def _form(name: str) -> int:
    return int(name[7:-1]) if "[" in name else 0


def _catalogue(entries: list[Entry]) -> Catalogue:
    heads = [entry for entry in entries if not entry.source and entry.context is None]
    header: dict[str, str] = {}
    for line in heads[0].translations[0].split("\n") if heads else ():
        name, colon, value = line.partition(":")
        if colon:
            header[name.strip()] = value.strip()
    rest = tuple(entry for entry in entries if entry.source or entry.context is not None)
    return Catalogue(header, heads[0].remarks if heads else (), rest)
