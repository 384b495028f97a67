"""A small device for drawings: a base with a board, a plug and two screws."""

from decimal import Decimal

from guidebuild.device.record import Device, View
from guidebuild.device.states import Kind
from guidebuild.device.things import Case, Connector, Hole, Part
from guidebuild.source.said import Said
from tests.outside.screws import screw, span_of

SPAN = span_of("record")


def said(text: str) -> Said:
    return Said(text, SPAN)


def hole(id: str, x: int, y: int) -> Hole:
    ends = (said("board"), said("base"))
    group, _, _ = id.partition(".")
    return Hole(
        key=id, id=id, span=SPAN, kind=Kind.FASTENER, ends=ends, group=group,
        screw=(Case(screw("M3x8 pan PH1"), None, SPAN),), view=said("inside"), xy=(Decimal(x), Decimal(y)),
    )  # fmt: skip


def device(view: View) -> Device:
    """The device with one view."""
    things = [
        Part(key="base", id="base", span=SPAN, kind=Kind.PART),
        Part(key="board", id="board", span=SPAN, kind=Kind.PART, host=said("base")),
        Part(key="shield", id="shield", span=SPAN, kind=Kind.PART, host=said("board")),
        Connector(
            key="plug",
            id="plug",
            span=SPAN,
            kind=Kind.CONNECTOR,
            ends=(said("base"), said("board")),
        ),
        hole("screws.a", 20, 20),
        hole("screws.b", 60, 20),
    ]
    names = {thing.id: (thing.key,) for thing in things} | {"screws": ("screws.a", "screws.b")}
    return Device(
        id="small", name=said("Small"), span=SPAN, base="base", identify=None, options=(),
        things={thing.key: thing for thing in things}, names=names, groups={}, functions={}, hazards={},
        pictures={}, views={view.id: view},
    )  # fmt: skip


def view_of_file(size: tuple[int, int] = (80, 100)) -> View:
    return View("inside", SPAN, said("inside.svg"), (Decimal(size[0]), Decimal(size[1])), {})


def view_of_outlines() -> View:
    outline = {
        "board": "M10,10H70V60H10Z",
        "base": "M0,0H80V100H0Z",
        "plug": "M30,50h20v6h-20z",
        "nobody": "M0,0H5V5Z",
    }
    return View("inside", SPAN, None, (Decimal(80), Decimal(100)), outline)
