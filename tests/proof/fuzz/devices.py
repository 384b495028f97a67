"""A random device: parts on parts, what ties them, what hides and guards them, what they hold."""

from dataclasses import dataclass, field, replace
from decimal import Decimal

from guidebuild.device.option import Option
from guidebuild.device.quantity import Quantity
from guidebuild.device.record import POWER, Device, Group
from guidebuild.device.states import WORDS, Kind, State
from guidebuild.device.things import Case, Connector, Hole, Joint, Part, Store, Thing, Torque
from guidebuild.source.said import Said
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.ink import Ink
from tests.proof.fuzz.options import perhaps

RIGID = ["clip", "hook", "press", "magnet", "solder", "tape", "bead", "route"]
JOINTS = ["clip", "seal", "adhesive", "hinge", "film", *RIGID]
FUNCTIONS = ["printing", "keys"]


@dataclass
class Bench:
    """A device in the making."""

    dice: Dice
    ink: Ink
    options: list[Option]
    things: dict[str, Thing] = field(default_factory=dict)
    names: dict[str, tuple[str, ...]] = field(default_factory=dict)
    groups: dict[str, Group] = field(default_factory=dict)

    def add(self, thing: Thing) -> None:
        """A thing under its own id."""
        self.things[thing.key] = thing
        self.names[thing.id] = (thing.key,)

    def parts(self) -> list[str]:
        """The ids of all parts so far."""
        return [key for key, thing in self.things.items() if isinstance(thing, Part)]

    def starts(self, kind: Kind) -> State | None:
        """Few things start otherwise than in; power is always there, on or off."""
        words = [
            state
            for word, state in WORDS[kind].items()
            if word != "absent" or kind is not Kind.POWER
        ]
        return self.dice.pick(words) if self.dice.often(2) else None

    def behind(self, name: str, per_cent: int) -> tuple[Said, ...]:
        """Covers: the parts made first hide those made later, seldom the other way round."""
        covers = [part for part in self.parts() if part not in ("frame", "socket", name)]
        if not covers or not self.dice.often(per_cent):
            return ()
        return self.ink.words([self.dice.pick(covers)])

    def at(self) -> Said | None:
        """Few things are worked somewhere unusual."""
        return self.ink.said(self.dice.pick(self.parts())) if self.dice.often(5) else None

    def inherits(self, behind: tuple[Said, ...]) -> bool:
        """Whether the thing does not say `behind: nothing`."""
        return bool(behind) or not self.dice.often(6)


def device(dice: Dice, ink: Ink, options: list[Option]) -> Device:
    """A device of a few parts."""
    bench = Bench(dice, ink, options)
    base = Part(key="frame", id="frame", span=ink.span(), kind=Kind.PART)
    bench.add(base)
    for number in range(dice.number(2, 5)):
        _part(bench, f"p{number}")
    _hide_more(bench)
    if dice.often(25):
        bench.add(Part(key="socket", id="socket", span=ink.span(), kind=Kind.PART, outside=True))
    for number in range(dice.number(0, 3)):
        _group(bench, f"s{number}")
    for number in range(dice.number(0, 3)):
        _connector(bench, f"c{number}")
    for number in range(dice.number(0, 3)):
        _joint(bench, f"j{number}")
    bench.add(
        Store(
            key=POWER,
            id=POWER,
            span=ink.span(),
            kind=Kind.POWER,
            store="power",
            starts=bench.starts(Kind.POWER),
        )
    )
    for number in range(dice.number(0, 2)):
        _store(bench, f"t{number}")
    return Device(
        id="dev",
        name=ink.said("dev"),
        span=ink.span(),
        base="frame",
        identify=None,
        options=tuple(options),
        things=bench.things,
        names=bench.names,
        groups=bench.groups,
        functions={name: ink.said(name) for name in FUNCTIONS},
        hazards={},
        pictures={},
        views={},
    )


def _part(bench: Bench, name: str) -> None:
    dice, ink = bench.dice, bench.ink
    hosts = [part for part in bench.parts() if part != "socket"]
    host = dice.pick(hosts) if dice.often(50) else "frame"
    behind = bench.behind(name, 35)
    bench.add(
        Part(
            key=name,
            id=name,
            span=ink.span(),
            kind=Kind.PART,
            host=ink.said(host),
            behind=behind,
            behind_inherits=bench.inherits(behind),
            at=bench.at(),
            when=perhaps(dice, ink, bench.options, 20),
            single_use=dice.often(6),
            starts=bench.starts(Kind.PART),
        )
    )


def _hide_more(bench: Bench) -> None:
    """Now and then a part lies behind one that was made later: one that is on it, or hides it in turn."""
    for key in [key for key in bench.parts() if key != "frame"]:
        others = [part for part in bench.parts() if part not in ("frame", "socket", key)]
        if bench.dice.often(10):
            covers = bench.ink.words([bench.dice.pick(others)])
            bench.things[key] = replace(bench.things[key], behind=covers, behind_inherits=True)


def _two_parts(bench: Bench) -> list[str]:
    """A part with its host, or with another part; seldom three."""
    dice = bench.dice
    movable = [part for part in bench.parts() if part not in ("frame", "socket")]
    one = dice.pick(movable)
    host = bench.things[one]
    assert isinstance(host, Part) and host.host is not None
    others = [host.host.text] * 3 + [part for part in bench.parts() if part != one]
    found = [one, dice.pick(others)]
    third = [part for part in bench.parts() if part not in found]
    if third and dice.often(8):
        found.append(dice.pick(third))
    return found


def _guards(bench: Bench, per_cent: int) -> tuple[Said, ...]:
    dice = bench.dice
    if not dice.often(per_cent):
        return ()
    among = [name for name in bench.names if name not in (POWER, "socket")]
    return bench.ink.words(sorted({dice.pick(among) for _ in range(dice.number(1, 2))}))


def _carries(bench: Bench, per_cent: int) -> tuple[Said, ...]:
    return bench.ink.words(bench.dice.some(FUNCTIONS, per_cent))


def _group(bench: Bench, name: str) -> None:
    dice, ink = bench.dice, bench.ink
    ends = ink.words(_two_parts(bench))
    captive, single_use = dice.often(20), dice.often(10)
    when, guards = perhaps(dice, ink, bench.options, 15), _guards(bench, 4)
    torque = _torques(bench)
    keys = []
    for hole in ["a", "b", "c"][: dice.number(1, 2)]:
        key = f"{name}.{hole}"
        behind = bench.behind(name, 12)
        bench.add(
            Hole(
                key=key,
                id=key,
                span=ink.span(),
                kind=Kind.FASTENER,
                group=name,
                ends=ends,
                captive=captive,
                single_use=single_use and not captive,
                when=when,
                guards=guards,
                torque=torque,
                behind=behind,
                at=bench.at(),
                starts=bench.starts(Kind.FASTENER),
                carries=_carries(bench, 5),
            )
        )
        keys.append(key)
    bench.names[name] = tuple(keys)
    bench.groups[name] = Group(name, ink.span(), tuple(keys), None)


def torque(dice: Dice, ink: Ink) -> Torque:
    """A small or a large figure, in one of two units, or a word."""
    number, unit = dice.pick([("1", "N·m"), ("2", "N·m"), ("150", "N·cm"), ("50", "N·cm")])
    if dice.often(15):
        return Torque(None, "by-hand")
    return Torque(Quantity(Decimal(number), unit, ink.span()), None)


def _torques(bench: Bench) -> tuple[Case[Torque], ...]:
    dice, ink = bench.dice, bench.ink
    if not dice.often(40):
        return ()
    cases = [Case(torque(dice, ink), None, ink.span())]
    special = perhaps(dice, ink, bench.options, 30)
    if special is not None:
        cases.insert(0, Case(torque(dice, ink), special, ink.span()))
    return tuple(cases)


def _connector(bench: Bench, name: str) -> None:
    dice, ink = bench.dice, bench.ink
    source = dice.often(35)
    bench.add(
        Connector(
            key=name,
            id=name,
            span=ink.span(),
            kind=Kind.CONNECTOR,
            ends=ink.words(_two_parts(bench)),
            source=source,
            live=dice.pick(["off" if source else "unfed", "any", "unfed", "off"]),
            when=perhaps(dice, ink, bench.options, 15),
            behind=bench.behind(name, 20),
            at=bench.at(),
            guards=_guards(bench, 12),
            carries=_carries(bench, 25),
            starts=bench.starts(Kind.CONNECTOR),
        )
    )


def _joint(bench: Bench, name: str) -> None:
    dice, ink = bench.dice, bench.ink
    bench.add(
        Joint(
            key=name,
            id=name,
            span=ink.span(),
            kind=Kind.JOINT,
            ends=ink.words(_two_parts(bench)),
            joint=dice.pick(JOINTS),
            single_use=dice.often(30),
            when=perhaps(dice, ink, bench.options, 15),
            behind=bench.behind(name, 12),
            at=bench.at(),
            guards=_guards(bench, 6),
            carries=_carries(bench, 8),
            starts=bench.starts(Kind.JOINT),
        )
    )


def _store(bench: Bench, name: str) -> None:
    dice, ink = bench.dice, bench.ink
    parts = [part for part in bench.parts() if part != "socket"]
    links = [key for key, one in bench.things.items() if isinstance(one, Hole | Connector | Joint)]
    workable = [POWER, *links, *parts]
    bench.add(
        Store(
            key=name,
            id=name,
            span=ink.span(),
            kind=Kind.STORE,
            inside=ink.said(dice.pick(parts)) if dice.often(85) else None,
            through=ink.said(dice.pick(links)) if links and dice.often(30) else None,
            filled_by=ink.words([dice.pick(workable)]) if dice.often(45) else (),
            emptied_by=ink.words([dice.pick(workable)]) if dice.often(40) else (),
            guards=_guards(bench, 45),
            at=bench.at(),
            when=perhaps(dice, ink, bench.options, 10),
            behind=bench.behind(name, 10),
            starts=bench.starts(Kind.STORE),
        )
    )
