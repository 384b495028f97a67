"""All checks of a sentence with its translation, found by their file names, and what mutes one of them."""

import re
from collections.abc import Iterator
from functools import cache
from importlib import import_module
from pkgutil import iter_modules
from types import ModuleType

from guidebuild.source.finding import Finding
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.catalogue.pair import Pair, Slip
from guidebuild.translate.po.entry import Entry

ROOM = "guidebuild.translate.checks"
_MARK = re.compile(r'msgstr(?:\[0\])? "|<target\b[^>]*>')  # a translation begins behind it
ALWAYS = frozenset({"placeholder-lost"})  # muted, the sentence could not be shown at all


@cache
def having(function: str) -> dict[str, ModuleType]:
    """Rule -> module, for the rules about translations that look at what this function takes."""
    names = sorted(one.name for one in iter_modules(import_module(ROOM).__path__))
    modules = {name.replace("_", "-"): import_module(f"{ROOM}.{name}") for name in names}
    return {name: module for name, module in modules.items() if hasattr(module, function)}


def slips(pair: Pair, but: frozenset[str] = frozenset()) -> Iterator[tuple[str, Slip]]:
    """Rule and slip, for every check but those named; a translator's remark `allow RULE: REASON` mutes one."""
    for rule, module in having("check_pair").items():
        if rule not in but and not _muted(rule, pair.entry):
            for slip in module.check_pair(pair):
                yield rule, slip


def _muted(rule: str, entry: Entry) -> bool:
    if rule in ALWAYS:
        return False
    return any(re.match(rf"allow\s+{rule}\s*:\s*\S", remark) for remark in entry.remarks)


def finding(rule: str, slip: Slip, source: Source, entry: Entry) -> Finding:
    """The slip as a finding in the file that the entry stands in."""
    module = having("check_pair")[rule]
    return Finding(
        rule,
        module.RULE.category,
        place(source, entry, slip.start, slip.end),
        module.MESSAGE.format_map(slip.words),
        module.HELP.format_map(slip.words),
    )


def place(source: Source, entry: Entry, start: int, end: int) -> Span:
    """A piece of the entry's own translation; the entry's first line where that is not written in one piece."""
    first = source.line_starts[max(entry.line, 1) - 1]
    mark = _MARK.search(source.text, first)
    if mark is not None and source.text.startswith(entry.translations[0], mark.end()):
        return Span(source, mark.end() + start, mark.end() + end)
    last = source.text.find("\n", first)
    return Span(source, first, last if last > 0 else len(source.text))
