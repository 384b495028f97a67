"""A catalogue into a file: one form for one meaning, so any tool's rewrite comes back to the same bytes."""

from guidebuild.translate.po.entry import Catalogue, Entry
from guidebuild.translate.po.header import in_order
from guidebuild.translate.po.quoting import quote


def write_po(catalogue: Catalogue) -> str:
    """The file's text, LF line ends. No wrapping: a line is broken only behind a line break of the text.

    Entries stand in the catalogue's order, obsolete ones last.
    """
    live = [entry for entry in catalogue.entries if not entry.obsolete]
    gone = [entry for entry in catalogue.entries if entry.obsolete]
    blocks = [_header(catalogue), *(_entry(entry) for entry in [*live, *gone])]
    return "\n\n".join(blocks) + "\n"


def _header(catalogue: Catalogue) -> str:
    remarks = [f"# {line}".rstrip() for line in catalogue.header_remarks]
    lines = [quote(f"{name}: {value}\n") for name, value in in_order(catalogue.header).items()]
    return "\n".join([*remarks, 'msgid ""', 'msgstr ""', *lines])


def _entry(entry: Entry) -> str:
    lines = [f"# {line}".rstrip() for line in entry.remarks]
    lines += [f"#. {line}".rstrip() for line in entry.notes]
    lines += [f"#: {reference}" for reference in entry.references]
    lines += [f"#, {', '.join(entry.flags)}"] if entry.flags else []
    mark = "#~ " if entry.obsolete else ""
    before = "#~| " if entry.obsolete else "#| "
    previous = entry.previous
    for name, text in (
        ("msgctxt", previous.context),
        ("msgid", previous.source),
        ("msgid_plural", previous.plural),
    ):
        lines += [before + line for line in _string(name, text)] if text is not None else []
    for name, text in _strings(entry):
        lines += [mark + line for line in _string(name, text)]
    return "\n".join(lines)


def _strings(entry: Entry) -> list[tuple[str, str]]:
    said: list[tuple[str, str]] = []
    if entry.context is not None:
        said.append(("msgctxt", entry.context))
    said.append(("msgid", entry.source))
    if entry.plural is None:
        return [*said, ("msgstr", entry.translations[0])]
    forms = [(f"msgstr[{number}]", text) for number, text in enumerate(entry.translations)]
    return [*said, ("msgid_plural", entry.plural), *forms]


def _string(name: str, text: str) -> list[str]:
    if "\n" not in text[:-1]:
        return [f"{name} {quote(text)}"]
    pieces = text.split("\n")
    whole = [f"{piece}\n" for piece in pieces[:-1]] + ([pieces[-1]] if pieces[-1] else [])
    return [f'{name} ""', *(quote(piece) for piece in whole)]
