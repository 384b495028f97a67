"""One case for the fuzz: a device and a guide on it."""

from dataclasses import dataclass, replace
from itertools import product

from guidebuild.device.option import Option
from guidebuild.device.record import Device
from guidebuild.device.states import WORDS, Kind, State
from guidebuild.guide.guide import Goal, Guide, KitUse
from guidebuild.guide.step import Step
from tests.proof.fuzz.devices import device, torque
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.ink import Ink
from tests.proof.fuzz.kits import kit
from tests.proof.fuzz.mistakes import mistaken
from tests.proof.fuzz.options import both, condition, options, perhaps
from tests.proof.fuzz.planner import Planner
from tests.proof.fuzz.procedures import Writer
from tests.proof.fuzz.shorthand import shortened
from tests.proof.fuzz.wishes import Wish, any_wish
from tests.proof.oracle.start import start
from tests.proof.oracle.world import World


@dataclass(frozen=True)
class Case:
    """What `prove` and the oracle are both given."""

    guide: Guide
    device: Device


def case(dice: Dice, mistakes: int = 3) -> Case:
    """A device, a procedure that is right for one configuration, and up to so many mistakes in it."""
    ink = Ink()
    asked = options(dice, ink)
    thing = device(dice, ink, asked)
    kits: list[KitUse] = []
    if dice.often(55):
        use, thing, forms = kit(dice, ink, thing)
        kits, asked = [use], [*asked, *forms]
    guide = _empty(dice, ink, thing, asked, kits)
    acts = _plan(dice, ink, guide, thing)
    for _ in range(dice.pick([0, 0, 1, 1, 2, mistakes])):
        mistaken(dice, ink, thing, asked, acts)
    remedies = ["remedy-1", "remedy-2"][: dice.pick([0, 0, 1, 2])]
    writer = Writer(dice, ink, thing, asked, remedies)
    return Case(replace(guide, stages=writer.stages(shortened(dice, thing, acts))), thing)


def _empty(dice: Dice, ink: Ink, thing: Device, asked: list[Option], kits: list[KitUse]) -> Guide:
    """The front matter."""
    verb = dice.pick(["replace", "inspect", "replace", "remove", "add", "replace"])
    movable = [part.id for part in thing.parts if part.host is not None and not part.packing]
    about = kits[0].kit.brings[0].text if kits and dice.often(80) else dice.pick(movable)
    rare = [condition(dice, ink, asked)] if dice.often(12) else []
    exclude = tuple(one for one in rare if one is not None)
    if not _something_left(asked, exclude):
        exclude = ()
    return Guide(
        id="guide",
        path="fuzz.md",
        span=ink.span(),
        title=ink.said("guide"),
        goal=Goal(verb, (ink.said(about),), ink.span()),
        kits=tuple(kits),
        options=tuple(asked),
        exclude=exclude,
        starts=_states(dice, thing, 6),
        ends=_states(dice, thing, 8),
    )


def _something_left(asked: list[Option], exclude: tuple[object, ...]) -> bool:
    """A single condition on one or two options of two values may exclude everything."""
    from tests.proof.oracle.conditions import holds

    values = [[value.id for value in one.values] for one in asked]
    answers = [dict(zip([one.id for one in asked], row, strict=True)) for row in product(*values)]
    return any(not any(holds(one, each) for one in exclude) for each in answers)  # type: ignore[arg-type]


def _states(dice: Dice, thing: Device, per_cent: int) -> dict[str, State]:
    """What the guide says of the start or the end of a thing."""
    if not dice.often(per_cent):
        return {}
    name = dice.pick(list(thing.names))
    kind = thing.things[thing.names[name][0]].kind
    words = [
        state for word, state in WORDS[kind].items() if word != "absent" or kind is not Kind.POWER
    ]
    return {name: dice.pick(words)}


def _plan(dice: Dice, ink: Ink, guide: Guide, thing: Device) -> list[Wish]:
    """What the planner does in one configuration, each act under its things' conditions."""
    answers = {one.id: dice.pick(one.values).id for one in guide.options}
    world = World(guide, thing, answers)
    planner = Planner(
        start(world), dice, Step(id="", title=ink.said(""), span=ink.span(), body=ink.span())
    )
    parts = [part.key for part in world.all_parts() if part.host is not None and not part.packing]
    goal = world.parts(guide.goal.parts)
    for part in (goal or parts)[:1] + dice.some(parts, 15):
        planner.open(part)
    planner.strip(goal)
    for part in goal if guide.goal.verb in ("replace", "add") else dice.some(parts, 10):
        planner.change(part)
    planner.move_over()
    if dice.often(90):
        planner.put_back()
        planner.finish()
    acts = []
    for verb, key in planner.done:
        kind, when = world.kind(key), thing.things[key].when
        said = torque(dice, ink) if kind is Kind.FASTENER and dice.often(30) else None
        when = when if dice.often(95) else both(when, perhaps(dice, ink, list(guide.options), 50))
        acts.append(Wish(kind, verb, (thing.things[key].id,), when, torque=said))
    for _ in range(dice.pick([0, 0, 0, 0, 1, 4])):
        acts.insert(dice.below(len(acts) + 1), any_wish(dice, thing))
    return acts or [any_wish(dice, thing)]
