"""The connectors, joints and stores of a record."""

from guidebuild.device.states import Kind
from guidebuild.device.things import Connector, Joint, Store
from guidebuild.read.device.thing import shared
from guidebuild.read.report import Report
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said


def connector(id_: Said, entry: Entry, report: Report) -> Connector:
    """A connector; a source may be worked with the power off, any other while it is not fed."""
    source = entry.get("source", False)
    live = entry.said("live")
    return Connector(
        **shared(id_.text, id_.span, Kind.CONNECTOR, entry, report),
        ends=entry.all_said("joins"),
        guards=entry.all_said("guards"),
        carries=entry.all_said("carries"),
        with_=entry.all_said("with"),
        source=source,
        style=entry.said("style"),
        live=live.text if live else "off" if source else "unfed",
    )


def joint(id_: Said, entry: Entry, report: Report) -> Joint:
    """A clip, hook, seal or other thing that holds without a screw."""
    kind = entry.said("kind")
    return Joint(
        **shared(id_.text, id_.span, Kind.JOINT, entry, report),
        ends=entry.all_said("joins"),
        guards=entry.all_said("guards"),
        carries=entry.all_said("carries"),
        with_=entry.all_said("with"),
        joint=kind.text if kind else "clip",
    )


def store(id_: Said, entry: Entry, report: Report) -> Store:
    """What the device holds besides its parts."""
    kind = entry.said("kind")
    return Store(
        **shared(id_.text, id_.span, Kind.STORE, entry, report),
        store=kind.text if kind else "charge",
        inside=entry.said("in"),
        through=entry.said("through"),
        filled_by=entry.all_said("filled-by"),
        emptied_by=entry.all_said("emptied-by"),
        guards=entry.all_said("guards"),
    )
