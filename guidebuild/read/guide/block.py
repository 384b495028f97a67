"""One fenced block: its YAML by the schema of its name, into acts, checks and the rest."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import cache
from importlib import import_module
from typing import Any, TypeAlias

from guidebuild.guide.guide import Allow
from guidebuild.guide.step import Item
from guidebuild.read.faults import unknown_block, wrong_type
from guidebuild.read.guide.acts import ACTS, act
from guidebuild.read.guide.allow import allows
from guidebuild.read.guide.moulds import Moulds
from guidebuild.read.guide.pieces import Fence
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.read.shape.schema import block_names
from guidebuild.read.yaml.read import read_entries, read_entry
from guidebuild.source.nearest import meant, nearest
from guidebuild.source.respelt import respelt

HEADS = frozenset({"stage", "step", "method"})  # say something of their section
Read: TypeAlias = Callable[[str, Entry, Report], Any]


@dataclass(slots=True)
class Blocks:
    """What the blocks of a file said besides acts: heads by the section, and which rules stay silent."""

    report: Report
    allows: list[Allow] = field(default_factory=list)


def name_of(fence: Fence, report: Report) -> str | None:
    """The block's name as it is meant, or None (and told) where it is no block."""
    name, known = fence.name.text, block_names()
    if name in known:
        if not fence.at_margin:
            _misplaced(fence, report)
        return name if fence.at_margin else None
    guess, sure = nearest(name, known), meant(name, known)
    report.tell(
        unknown_block,
        fence.name.span,
        lost=sure is None,
        edits=respelt(fence.name.span, name, known),
        name=name,
        do=f"write `{guess}`" if guess else "the blocks are " + ", ".join(known),
    )
    if sure is None:
        report.lose(fence.name.span.source.path)
    return sure if fence.at_margin else None


def _misplaced(fence: Fence, report: Report) -> None:
    report.tell(
        wrong_type,
        fence.name.span,
        what=f"a `{fence.name.text}` block",
        wanted="stand by itself at the left margin",
        found=", not in a list or quotation",
        do="move it out, with a blank line before it",
    )


def head(fence: Fence, name: str, blocks: Blocks) -> Entry | None:
    """What a `stage`, `step` or `method` block says."""
    span = fence.span
    return read_entry(span.source, fence.start, fence.end, f"blocks/{name}", name, blocks.report)


_MOULDS = Moulds()


def items(fence: Fence, name: str, blocks: Blocks) -> list[Item]:
    """The acts or other things that a block says, in order."""
    source, report = fence.span.source, blocks.report
    slot = (name, source.text[fence.start : fence.end])
    known = _MOULDS.items(slot, source, fence.start, fence.span)
    if known is not None:
        return known
    before = report.calls, len(blocks.allows)
    found = list(_read(fence, name, blocks))
    if before == (report.calls, len(blocks.allows)):
        _MOULDS.keep(slot, found, fence.start, fence.span)
    return found


def _read(fence: Fence, name: str, blocks: Blocks) -> Iterator[Item]:
    span, report = fence.span, blocks.report
    entries = read_entries(span.source, fence.start, fence.end, f"blocks/{name}", name, report)
    for entry in entries:
        blocks.allows += allows(entry, span)
        made = act(name, entry, span) if name in ACTS else _reader(name)(name, entry, report)
        if made is not None:
            yield made


@cache
def _reader(name: str) -> Read:
    read: Read = import_module(f"guidebuild.read.guide.blocks.{name}").read
    return read
