"""The record says something that no device can be.

Two parts that lie behind each other can never come off; a part on a host that is never there can
never be fitted; a kit can't bring a bar that has nothing to sit on. A proof of such a record proves
nothing: it is silent where it should speak. So the record is looked at first.

Source: common practice, no source.
"""

from collections.abc import Iterator
from functools import reduce
from operator import and_, or_

from guidebuild.device.layout import Layout
from guidebuild.device.naming import called
from guidebuild.device.things import Link, Part
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category
from guidebuild.source.span import Span

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "this can't be: {what}"

HELP = "look at the device itself and correct the record (or the kit)"


def check(proof: Proof) -> Iterator[Hit]:
    yield from _hosts_in_a_circle(proof)
    yield from _behind_each_other(proof)
    yield from _without_ends(proof)
    yield from _without_host_in_a_kit(proof)


def _hosts_in_a_circle(proof: Proof) -> Iterator[Hit]:
    told: set[str] = set()
    for part in proof.device.parts:
        way = [part]
        while (host := _host(proof, way[-1])) is not None and host not in way:
            way.append(host)
        if host is part and part.key not in told:
            told |= {one.key for one in way}
            names = " on ".join(called(proof.device, one.key) for one in (*way, part))
            assert part.host is not None
            yield _hit(part.host.span, f"{names}")


def _host(proof: Proof, part: Part) -> Part | None:
    keys = proof.device.names.get(part.host.text, ()) if part.host else ()
    return next((one for key in keys if isinstance(one := proof.device.things[key], Part)), None)


def _behind_each_other(proof: Proof) -> Iterator[Hit]:
    """Parts of which each must be off before the other, directly or over others."""
    told: set[str] = set()
    for part in proof.device.parts:
        before = _must_be_off_before(proof.layout, part.key)
        where = before.get(part.key, 0)
        if where and part.key not in told:
            others = [
                key
                for key in before
                if part.key in _must_be_off_before(proof.layout, key) and key != part.key
            ]
            told |= {part.key, *others}
            names = " and ".join(called(proof.device, key) for key in (part.key, *others))
            what = f"{names} lie behind each other" if others else f"{names} lies behind itself"
            yield _hit(part.behind[0].span if part.behind else part.span, what, where)


def _must_be_off_before(asked: Layout, key: str) -> dict[str, int]:
    """What must come off before a part, and before that, and so on; where."""
    found: dict[str, int] = {}
    waiting = [(key, asked.everywhere)]
    while waiting:
        one, where = waiting.pop()
        for cover, there in asked.covers.behind(one):
            new = where & there & ~found.get(cover, 0)
            if new:
                found[cover] = found.get(cover, 0) | new
                waiting.append((cover, new))
    return found


def _without_ends(proof: Proof) -> Iterator[Hit]:
    """Links and parts that have a place in no configuration of their own."""
    for thing in proof.device.things.values():
        needed = thing.ends if isinstance(thing, Link) else ()
        if isinstance(thing, Part) and thing.host is not None:
            needed = (thing.host,)
        where = [_anywhere(proof, said.text) for said in needed]
        own = proof.configurations.bits(thing.when)
        if where and own and not own & reduce(and_, where):
            names = " and ".join(said.text for said in needed)
            yield _hit(
                thing.span, f"{called(proof.device, thing.key)} needs {names}, never there with it"
            )


def _anywhere(proof: Proof, name: str) -> int:
    """Where something of this id is there."""
    keys = proof.device.names.get(name, ())
    return reduce(
        or_, (proof.configurations.bits(proof.device.things[key].when) for key in keys), 0
    )


def _without_host_in_a_kit(proof: Proof) -> Iterator[Hit]:
    for use in proof.guide.kits:
        brought = {said.text for said in use.kit.brings}
        for form in use.kit.forms:
            there = brought | {said.text for said in form.arrives_with}
            for said in form.arrives_with:
                for key in proof.device.names.get(said.text, ()):
                    thing = proof.device.things[key]
                    if isinstance(thing, Part) and (
                        thing.host is None or thing.host.text not in there
                    ):
                        host = thing.host.text if thing.host else "nothing"
                        yield _hit(
                            said.span,
                            f"{called(proof.device, key)} sits on {host}, which is not brought",
                        )


def _hit(span: Span, what: str, where: int | None = None) -> Hit:
    return Hit(span, {"what": what}, (), where)
