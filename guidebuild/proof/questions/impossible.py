"""What a record or a kit says that no device can be, found without walking anything."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import reduce
from operator import and_, or_

from guidebuild.device.layout import Layout
from guidebuild.device.naming import called, listed
from guidebuild.device.record import Device
from guidebuild.device.things import Link, Part, Thing
from guidebuild.guide.configurations import Configurations
from guidebuild.proof.proof import Proof
from guidebuild.source.remembered import remembered
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Impossible:
    """`what` can't be, in words; `where`: the configurations, None for all."""

    span: Span
    what: str
    where: int | None = None


def impossible(proof: Proof) -> tuple[Impossible, ...]:
    """All of it: what the record says, and what a kit of this guide brings."""
    return (*_of_record(proof.layout, proof.configurations), *_brought_without_host(proof))


@remembered
def _of_record(layout: Layout, configurations: Configurations) -> tuple[Impossible, ...]:
    """The same for all guides of a record that are numbered alike."""
    return (
        *_hosts_in_a_circle(layout.device),
        *_behind_each_other(layout),
        *_never_with_what_it_needs(layout.device, configurations),
    )


def _hosts_in_a_circle(device: Device) -> Iterator[Impossible]:
    """Parts that sit on each other; each circle once."""
    told: set[str] = set()
    for part in device.parts:
        way = [part]
        while (host := _host(device, way[-1])) is not None and host not in way:
            way.append(host)
        if host is part and part.key not in told and part.host is not None:
            told |= {one.key for one in way}
            names = " on ".join(called(device, one.key) for one in (*way, part))
            yield Impossible(part.host.span, f"{names} again")


def _behind_each_other(layout: Layout) -> Iterator[Impossible]:
    """Parts of which each must be off before the other, directly or over others; each knot once."""
    told: set[str] = set()
    for part in layout.device.parts:
        before = _must_be_off_before(layout, part.key)
        where = before.get(part.key, 0)
        if where and part.key not in told:
            others = [
                key
                for key in before
                if key != part.key and part.key in _must_be_off_before(layout, key)
            ]
            told |= {part.key, *others}
            names = listed([called(layout.device, key) for key in (part.key, *others)])
            words = "lie behind each other" if others else "lies behind itself"
            span = part.behind[0].span if part.behind else part.span
            yield Impossible(span, f"{names} {words}", where)


def _must_be_off_before(layout: Layout, key: str) -> dict[str, int]:
    """What must come off before a part can, and before that, and so on; each with its configurations."""
    found: dict[str, int] = {}
    waiting = [(key, layout.everywhere)]
    while waiting:
        one, where = waiting.pop()
        for cover, there in layout.covers.behind(one).items():
            both = where & there
            new = both ^ (both & found.get(cover, 0))
            if new:
                found[cover] = found.get(cover, 0) | new
                waiting.append((cover, new))
    return found


def _never_with_what_it_needs(
    device: Device, configurations: Configurations
) -> Iterator[Impossible]:
    """Links whose ends, and parts whose host, are in no configuration there together with them."""
    for thing in device.things.values():
        needed = _needed(thing)
        where = [_anywhere(device, configurations, said.text) for said in needed]
        own = configurations.bits(thing.when)
        if where and own and not own & reduce(and_, where):
            names = listed([said.text for said in needed])
            what = f"{called(device, thing.key)} needs {names}, never there with it"
            yield Impossible(thing.span, what)


def _brought_without_host(proof: Proof) -> Iterator[Impossible]:
    """What a kit brings although it does not bring what that sits on."""
    for use in proof.guide.kits:
        brought = {said.text for said in use.kit.brings}
        for form in use.kit.forms:
            there = brought | {said.text for said in form.arrives_with}
            for said in form.arrives_with:
                for host in _hosts_of(proof, said):
                    if host not in there:
                        what = f"{said} sits on {host}, which the kit does not bring"
                        yield Impossible(said.span, what)


def _host(device: Device, part: Part) -> Part | None:
    keys = device.names.get(part.host.text, ()) if part.host else ()
    return next((one for key in keys if isinstance(one := device.things[key], Part)), None)


def _hosts_of(proof: Proof, said: Said) -> set[str]:
    things = (proof.device.things[key] for key in proof.device.names.get(said.text, ()))
    return {one.host.text for one in things if isinstance(one, Part) and one.host}


def _needed(thing: Thing) -> tuple[Said, ...]:
    match thing:
        case Link(ends=ends):
            return ends
        case Part(host=Said() as host):
            return (host,)
        case _:
            return ()


def _anywhere(device: Device, configurations: Configurations, name: str) -> int:
    """Where something of this id is there."""
    keys = device.names.get(name, ())
    return reduce(or_, (configurations.bits(device.things[key].when) for key in keys), 0)
