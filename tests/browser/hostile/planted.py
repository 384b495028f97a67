"""The demo with a payload in every place where a person writes words, in source and in translation."""

import json
import re
import shutil
from collections import defaultdict
from dataclasses import replace
from pathlib import Path

from guidebuild.build.catalogues import sources
from guidebuild.build.make import make
from guidebuild.build.take_out import now, write_catalogue
from guidebuild.read.content import read_content
from guidebuild.source.span import Span
from guidebuild.translate.segments.segment import Segment
from tests.browser.hostile.corpus import nth

CONTENT = Path(__file__).resolve().parents[3] / "content"
LANGUAGE = "de"
# What no translator gets, but a page may show: value of a key, or an item of a list.
_BESIDE = re.compile(
    r"(?:publisher|help-line|part-number|printed|printed-on|number|by|serial): +(?!true\b)"
    r'("[^"\n]*"|[\w .+-]+?)(?= *(?:#.*)?[\n,}])'
)
_FENCE = re.compile(r"^(?:```|---$)", re.MULTILINE)


def planted(room: Path, turn: int, languages: tuple[str, ...] = ("en", LANGUAGE)) -> Path:
    """A content folder in which slot n has payload n + turn."""
    root = room / "content"
    shutil.copytree(CONTENT, root, ignore=shutil.ignore_patterns("translations", "brindle*"))
    settings = root / "guidebuild.yaml"
    said = settings.read_text(encoding="utf-8").replace("[en, de, ar]", f"[{', '.join(languages)}]")
    settings.write_text(said, encoding="utf-8")
    number = turn
    for path, places in sorted(_places(root).items()):
        text = (root / path).read_text(encoding="utf-8")
        for start, end in sorted(places, reverse=True):
            text = text[:start] + _written(text, start, path, number) + text[end:]
            number += 1
        (root / path).write_text(text, encoding="utf-8", newline="\n")
    return root


def translated(root: Path, turn: int) -> None:
    """Every sentence that a translator gets, with a payload for its translation."""
    content, _ = read_content(root)
    number = turn
    for file, catalogue in now(root, content, LANGUAGE)[0].items():
        entries = []
        for entry in catalogue.entries:
            entries.append(replace(entry, translations=(nth(number),)))
            number += 1
        whole = replace(catalogue, entries=tuple(entries))
        write_catalogue(root, file, LANGUAGE, whole)


def built(room: Path, turn: int, source: bool) -> Path:
    """A site with payloads in the source, or in the translation of a source that is as it was."""
    if source:
        root = planted(room, turn, ("en",))
    else:
        root = room / "content"
        shutil.copytree(CONTENT, root, ignore=shutil.ignore_patterns("translations", "brindle*"))
        settings = root / "guidebuild.yaml"
        said = settings.read_text(encoding="utf-8").replace("[en, de, ar]", f"[en, {LANGUAGE}]")
        settings.write_text(said, encoding="utf-8")
        translated(root, turn)
    made = make(root, room / "site")
    assert not made.site.result.faults + made.site.faults, "a fault of ours"
    return room / "site"


def slots() -> int:
    """How many places a source has, without those of the device that is left out."""
    return sum(len(some) for path, some in _places(CONTENT).items() if "brindle" not in path)


def _places(root: Path) -> dict[str, set[tuple[int, int]]]:
    """File -> where its words stand."""
    content, findings = read_content(root)
    assert not findings
    found: dict[str, set[tuple[int, int]]] = defaultdict(set)
    for file, segments in sources(content).items():
        for segment in segments:
            found[file].add(_whole(segment))
    for path in ("guidebuild.yaml", *found):
        text = (root / path).read_text(encoding="utf-8")
        for match in _BESIDE.finditer(text):
            if path.endswith(".yaml") or match.start() < text.find("\n---", 3):
                found[path].add(match.span(1))
    return found


def _whole(segment: Segment) -> tuple[int, int]:
    """The words with the quotation marks around them."""
    span: Span = segment.span
    text, start, end = span.source.text, span.start, span.end
    quoted = text[start - 1] in "\"'" and text[end : end + 1] == text[start - 1]
    return (start - 1, end + 1) if quoted else (start, end)


def _written(text: str, at: int, path: str, number: int) -> str:
    """As an author would write it there: as a string of YAML, or as a line of Markdown.

    A number before it keeps titles apart, whose ids are made of them. `<!--` is the markup's own comment, so it is
    escaped; a picture from elsewhere is refused by the reader, so that there would be no page.
    """
    payload = nth(number)
    if path.endswith(".yaml") or len(_FENCE.findall(text, 0, at)) % 2:
        return json.dumps(payload, ensure_ascii=False)
    line = payload.removeprefix("!").replace("<!--", "\\<!--").replace("\n", " ")
    if (
        text[at - 1] == "["
    ):  # the words of a link to a shared stage: a link in them would take its place
        line = re.sub(r"([\[\]<`\\])", r"\\\1", line)
    return f"{number} {line}"
