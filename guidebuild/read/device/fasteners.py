"""The fastener groups of a record, each with its holes."""

from collections.abc import Iterator

from guidebuild.device.record import Group
from guidebuild.device.screw import Screw
from guidebuild.device.states import Kind
from guidebuild.device.things import Case, Hole
from guidebuild.read.device.thing import merged, shared
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said

_OF_THE_GROUP = ("holes", "name", "sequence")


def fasteners(
    id_: Said, entry: Entry, base: Said, report: Report
) -> tuple[Group, tuple[Hole, ...]]:
    """A group and its holes; a hole has what its group says, and what it says itself."""
    holes = tuple(_hole(id_, name, own, entry, base, report) for name, own in _named(id_, entry))
    sequence = entry.said("sequence")
    keys = tuple(hole.key for hole in holes)
    group = Group(id_.text, id_.span, keys, sequence.text if sequence else None, entry.said("name"))
    return group, holes


def _named(id_: Said, entry: Entry) -> Iterator[tuple[Said, Entry]]:
    """Each hole's name with what is said of it alone."""
    holes = entry.get("holes", None)
    if isinstance(holes, Entry):
        for said in map(holes.key, holes.marks):
            value = holes.values.get(said.text)
            own = value if isinstance(value, Entry) else Entry(said.span)
            if isinstance(value, tuple):  # no more than its place
                own.values["xy"] = value
            yield said, own
        return
    for number in range(1, min(holes if isinstance(holes, int) else 1, 999) + 1):
        yield Said(str(number), id_.span), Entry(id_.span)


def _hole(group: Said, name: Said, own: Entry, entry: Entry, base: Said, report: Report) -> Hole:
    of_group = Entry(
        entry.place, {}, {k: v for k, v in entry.values.items() if k not in _OF_THE_GROUP}
    )
    both = merged(of_group, own)
    into = both.all_said("into") or (base,)
    return Hole(
        **shared(f"{group.text}.{name.text}", name.span, Kind.FASTENER, both, report),
        ends=both.all_said("holds") + into,
        guards=both.all_said("guards"),
        carries=both.all_said("carries"),
        with_=both.all_said("with"),
        group=group.text,
        screw=both.get("screw", ()),
        torque=both.get("torque", ()),
        thread_depth=both.get("thread-depth", ()),
        grip=both.get("grip", ()),
        captive=both.get("captive", False) or _captive(both),
        view=both.said("view"),
        xy=both.get("xy", None),
    )


def _captive(entry: Entry) -> bool:
    """Whether the words on the bag say so, of every screw that may be there."""
    cases: tuple[Case[Screw], ...] = entry.get("screw", ())
    return bool(cases) and all(case.value.captive for case in cases)
