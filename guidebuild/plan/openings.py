"""Everything in a device that hands can open, one entry an act; screws that nothing tells apart are one."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.ends import is_soft
from guidebuild.device.layout import Layout
from guidebuild.device.record import POWER
from guidebuild.device.states import Kind, State
from guidebuild.device.things import Connector, Hole, Joint, Link, Part, Store, Thing


@dataclass(frozen=True, slots=True)
class Opening:
    """An opening act on things of one kind, in the record's order; `where`: the configurations that have it."""

    verb: Verb
    keys: tuple[str, ...]
    where: int
    tool: str | None = None  # an id of tools.yaml, or a screw's drive

    @property
    def name(self) -> str:
        """`remove cover-screws.left, cover-screws.right`: for messages and tests."""
        return f"{self.verb.value} {', '.join(self.keys)}"


def openings(layout: Layout) -> Iterator[Opening]:
    """All of them, in the record's order; of a part that can be lifted on its cables, lifting comes first."""
    device, where = layout.device, layout.presence.where
    for thing in device.things.values():
        if not where[thing.key] or begins_open(layout, thing):
            continue
        match thing:
            case Part():
                if can_lift(layout, thing):
                    yield Opening(Verb.LIFT, (thing.key,), where[thing.key])
                yield Opening(Verb.REMOVE, (thing.key,), where[thing.key])
            case Hole():
                verb = Verb.LOOSEN if thing.captive else Verb.REMOVE
                yield Opening(verb, (thing.key,), where[thing.key], driver(thing))
            case Connector():
                yield Opening(Verb.DISCONNECT, (thing.key,), where[thing.key], tool(thing))
            case Joint() if thing.joint != "seal":  # a seal is broken by the part that leaves it
                yield Opening(Verb.RELEASE, (thing.key,), where[thing.key], tool(thing))
            case Store() if thing.kind is Kind.STORE:
                yield Opening(Verb.RELEASE, (thing.key,), where[thing.key])
            case Store():
                yield Opening(Verb.SWITCH_OFF, (POWER,), layout.everywhere)
            case _:
                pass


def can_lift(layout: Layout, part: Part) -> bool:
    """Whether it may be opened on what still ties it: a hinge, or plugs where the record says how far."""
    soft = [link for link in links_across(layout, part.key) if is_soft(link)]
    return bool(soft) and (part.opens_to is not None or any(is_hinge(link) for link in soft))


def is_hinge(link: Link) -> bool:
    """What a part may stay on for as long as the work lasts."""
    return is_soft(link) and isinstance(link, Joint)


def links_across(layout: Layout, part: str) -> list[Link]:
    """The links between a part, with all that the record puts on it, and the rest."""
    on_it = {part, *layout.hosts.carried(part)}
    return [
        link
        for link in layout.touching(part)
        if any(end not in on_it for end, _ in layout.ends.of(link))
    ]


def begins_open(layout: Layout, thing: Thing) -> bool:
    """Whether nothing is to be done: the record says so, or a part that it ties is not on at the start."""
    if thing.starts is not None:
        return not thing.starts & (State.IN | State.HALF)
    if isinstance(thing, Part):
        return thing.packing
    if isinstance(thing, Link):
        ends = (layout.device.part(end) for end, _ in layout.ends.of(thing))
        return any(
            end.packing or (end.starts is not None and not end.starts & (State.IN | State.HALF))
            for end in ends
        )
    return False


def driver(hole: Hole) -> str | None:
    """What turns its screw: the tool that the record names, else the drive of the screw."""
    if hole.with_:
        return hole.with_[0].text
    drives = [case.value.drive for case in hole.screw if case.value.drive]
    return drives[0] if drives else None


def tool(link: Link) -> str | None:
    """The first of the tools that the record names; None: by hand."""
    return link.with_[0].text if link.with_ else None
