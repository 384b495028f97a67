"""What the new unit brings."""

from dataclasses import dataclass

from guidebuild.device.kit import Form
from guidebuild.device.states import Kind
from guidebuild.guide.guide import KitUse
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import HALF, IN, LEFT, OUT, turned
from tests.proof.oracle.tree import ends, host, is_on
from tests.proof.oracle.world import World


@dataclass(frozen=True)
class Delivery:
    """What comes with a part: parts on it, links inside these, listed links at its rim."""

    parts: frozenset[str]
    inside: frozenset[str]
    rim: frozenset[str]


def form_here(world: World, use: KitUse) -> Form | None:
    """The form in which the kit comes in this configuration."""
    if use.option is None or use.option not in world.answers:
        return next(iter(use.kit.forms), None)
    chosen = world.answers[use.option]
    return next((form for form in use.kit.forms if form.id == chosen), None)


def deliveries(world: World, part: str) -> list[Delivery]:
    """One for each kit that brings the part."""
    found = []
    for use in world.guide.kits:
        form = form_here(world, use)
        if form is not None and part in world.parts(use.kit.brings):
            found.append(_delivery(world, part, world.keys(form.arrives_with)))
    return found


def _delivery(world: World, part: str, listed: list[str]) -> Delivery:
    parts = {key for key in listed if world.kind(key) is Kind.PART and is_on(world, key, part)}
    inside = {
        link.key
        for link in world.links()
        if set(ends(world, link.key)) <= parts | {part} and set(ends(world, link.key)) != {part}
    }
    rim = {
        key
        for key in listed
        if world.kind(key) in (Kind.FASTENER, Kind.CONNECTOR, Kind.JOINT)
        and any(end == part or is_on(world, end, part) for end in ends(world, key))
    } - inside
    return Delivery(frozenset(parts), frozenset(inside), frozenset(rim))


def left_over(before: Moment, part: str) -> set[str]:
    """What lay on the bench for the old unit, and comes with the new one."""
    found: set[str] = set()
    for delivery in deliveries(before.world, part):
        spare = {key for key in delivery.parts if before.surely(key, OUT)}
        found |= spare
        found |= {
            key
            for key in delivery.inside
            if before.world.kind(key) is Kind.FASTENER
            and before.surely(key, OUT)
            and not spare & set(ends(before.world, key))
        }
    return found


def arrives(moment: Moment, part: str) -> None:
    """What comes with the new unit is in; what is listed at its rim is there, fresh; so is its packing."""
    world = moment.world
    for delivery in deliveries(world, part):
        for key in delivery.parts | delivery.inside:
            moment.now[key] = IN
        for key in delivery.rim:
            moment.now[key] = HALF if world.captive(key) else OUT
        for store in world.stores():
            if store.inside is not None and world.parts([store.inside])[0] in delivery.parts:
                moment.now[store.key] = turned(moment.now[store.key], LEFT, IN, True, True)
        for packing in world.all_parts():
            if packing.packing and host(world, packing.key) == part:
                moment.now[packing.key] = IN
