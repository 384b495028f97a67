"""A catalogue as XLIFF 2.1, and as 1.2 for older tools: one unit an entry, one segment a unit.

One segment a unit, since a reader was measured that mixed the source of one segment with the target of another.
What was outdated keeps its translation, its old source and what changed, as notes.
"""

from collections.abc import Iterator
from xml.sax.saxutils import escape, quoteattr

from guidebuild.translate.po.entry import Catalogue, Entry
from guidebuild.translate.xliff.coded import inline

_HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n'
OUTDATED = "guidebuild:outdated"


def write_xliff(catalogue: Catalogue, file: str, source: str, target: str) -> str:
    """XLIFF 2.1 text, LF line ends; `file` is the content file, `source` and `target` language tags."""
    start = (
        f'<xliff xmlns="urn:oasis:names:tc:xliff:document:2.0" version="2.1" '
        f'srcLang="{source}" trgLang="{target}">'
    )
    heads = [f"{name}: {value}" for name, value in catalogue.header.items()]
    notes = "".join(f'    <note category="header">{escape(line)}</note>\n' for line in heads)
    notes = f"   <notes>\n{notes}   </notes>\n" if notes else ""
    units = "".join(_unit(entry, number) for number, entry in enumerate(_live(catalogue), 1))
    body = f' <file id="f1" original={quoteattr(file)} canResegment="no">\n{notes}{units} </file>\n'
    return f"{_HEAD}{start}\n{body}</xliff>\n"


def write_old_xliff(catalogue: Catalogue, file: str, source: str, target: str) -> str:
    """XLIFF 1.2 text of the same."""
    start = '<xliff xmlns="urn:oasis:names:tc:xliff:document:1.2" version="1.2">'
    units = "".join(_old_unit(entry) for entry in _live(catalogue))
    what = f'source-language="{source}" target-language="{target}" datatype="plaintext"'
    file_start = f" <file original={quoteattr(file)} {what}>\n"
    return f"{_HEAD}{start}\n{file_start}  <body>\n{units}  </body>\n </file>\n</xliff>\n"


def _live(catalogue: Catalogue) -> Iterator[Entry]:
    return (entry for entry in catalogue.entries if not entry.obsolete)


def _notes(entry: Entry) -> Iterator[tuple[str, str]]:
    yield from (("remark", line) for line in entry.remarks)
    for line in entry.notes:
        yield ("changed" if line.startswith("changed: ") else "context"), line
    if entry.previous.source is not None:
        yield "previous-source", entry.previous.source


def _unit(entry: Entry, number: int) -> str:
    notes = "".join(
        f'    <note category="{category}">{escape(line)}</note>\n'
        for category, line in _notes(entry)
    )
    notes = f"   <notes>\n{notes}   </notes>\n" if notes else ""
    text = entry.translations[0]
    state = f'state="initial" subState="{OUTDATED}"' if entry.fuzzy and text else 'state="initial"'
    state = state if entry.fuzzy or not text else 'state="translated"'
    target = f"\n    <target>{inline(text)}</target>" if text else ""
    segment = f"   <segment {state}>\n    <source>{inline(entry.source)}</source>{target}\n   </segment>\n"
    name = quoteattr(entry.context or "")
    return f'  <unit id="u{number}" name={name} xml:space="preserve">\n{notes}{segment}  </unit>\n'


def _old_unit(entry: Entry) -> str:
    text = entry.translations[0]
    state = "needs-review-translation" if entry.fuzzy else "translated"
    target = f'\n    <target state="{state}">{inline(text, old=True)}</target>' if text else ""
    notes = "".join(
        f'\n    <note from="{category}">{escape(line)}</note>' for category, line in _notes(entry)
    )
    source = f"    <source>{inline(entry.source, old=True)}</source>"
    start = f'   <trans-unit id={quoteattr(entry.context or "")} xml:space="preserve">'
    return f"{start}\n{source}{target}{notes}\n   </trans-unit>\n"
