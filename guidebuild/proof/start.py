"""How the device stands before the first act: everything in, but for what the record or the guide says."""

from guidebuild.device.ends import is_soft
from guidebuild.device.record import POWER
from guidebuild.device.things import Hole, Link, Part, Thing
from guidebuild.proof.bench import Bench
from guidebuild.proof.bodies import all_perhaps, all_surely, one_body
from guidebuild.proof.cells import Value
from guidebuild.proof.marks import OLD, mark
from guidebuild.proof.plain import ABSENT, HALF, HOLDING, IN, OUT
from guidebuild.proof.scene import History, Scene, unknown


def begin(bench: Bench) -> Scene:
    """The scene at the start, with a mark on each part that the goal replaces."""
    scene = Scene(bench, {}, History())
    said = said_starts(bench)
    odd = _parts(scene, said)
    for thing in bench.device.things.values():
        if not isinstance(thing, Part):
            _rest(scene, thing, said.get(thing.key), odd)
    _power(scene, said.get(POWER))
    if bench.guide.goal.verb == "replace":
        for key in bench.goal:
            scene.values[mark(key)] = OLD
    return scene


def said_starts(bench: Bench) -> dict[str, int]:
    """What the record says of a thing's start, and over it the guide."""
    said = {
        thing.key: int(thing.starts)
        for thing in bench.device.things.values()
        if thing.starts is not None
    }
    for name, state in bench.guide.starts.items():
        said.update(dict.fromkeys(bench.device.names.get(name, ()), int(state)))
    return said


def _parts(scene: Scene, said: dict[str, int]) -> set[str]:
    """All parts; those that are not simply fitted are handed back, for the links to mind."""
    bench = scene.bench
    added = bench.goal if bench.guide.goal.verb == "add" else ()
    parts = sorted(
        bench.device.parts,
        key=lambda part: max(
            (len(c.parts) for c in bench.layout.hosts.chains(part.key)), default=0
        ),
    )
    odd = set()
    for part in parts:
        value: Value = said.get(part.key, IN)
        if part.key not in said:
            if part.key in added or part.packing:
                value = ABSENT
            for host, there in bench.layout.hosts.host(part.key):
                gone = there & scene.surely(host, ABSENT) if host in odd else 0
                value = bench.cells.put(value, gone, ABSENT)
        if value != IN:
            odd.add(part.key)
        _set(scene, part.key, value)
    return odd


def _rest(scene: Scene, thing: Thing, said: int | None, odd: set[str]) -> None:
    value: Value = IN if said is None else said
    if said is None and odd and isinstance(thing, Link) and _near(scene, thing, odd):
        value = _derived(scene, thing)
    _set(scene, thing.key, value)


def _near(scene: Scene, link: Link, odd: set[str]) -> bool:
    ends = scene.layout.ends.of(link)
    chains = (chain for end, _ in ends for chain in scene.layout.hosts.chains(end))
    return any(part in odd for chain in chains for part in chain.parts)


def _derived(scene: Scene, link: Link) -> Value:
    """Of a cover that starts off, the screws start out: where its parts are together, a link is in."""
    cells, where = scene.cells, scene.everywhere
    sure, maybe = (_hanging_together if is_soft(link) else _seated)(scene, link)
    value: Value = unknown(link.kind)
    value = cells.put(value, sure, IN)
    open_ = HALF if isinstance(link, Hole) and link.captive else OUT
    return cells.put(value, scene.without(where, maybe), open_)


def _seated(scene: Scene, link: Link) -> tuple[int, int]:
    """Across two roots the ends need only be here."""
    seats = scene.layout.ends.seats(link)
    if any(path.apart for path in seats):
        return _hanging_together(scene, link)
    return one_body(scene, seats, scene.everywhere)


def _hanging_together(scene: Scene, link: Link) -> tuple[int, int]:
    """Where each end is fitted or lifted, and all that it sits on."""
    sure = maybe = scene.everywhere
    for end, _ in scene.layout.ends.of(link):
        for chain in scene.layout.hosts.chains(end):
            elsewhere = scene.without(scene.everywhere, chain.where)
            sure &= elsewhere | all_surely(scene, chain.parts, HOLDING, chain.where)
            maybe &= elsewhere | all_perhaps(scene, chain.parts, HOLDING, chain.where)
    return sure, maybe


def _power(scene: Scene, said: int | None) -> None:
    if POWER not in scene.values:
        scene.values[POWER] = IN
    if said is not None:
        return
    fed = has = 0
    for plug in scene.layout.sources:
        has |= scene.layout.presence.where[plug.key]
        fed |= scene.perhaps(plug.key, IN)
    scene.put(POWER, scene.without(has, fed), OUT)


def _set(scene: Scene, key: str, value: Value) -> None:
    """What is not in a configuration is absent there. Things under one condition share their value."""
    there = scene.layout.presence.where[key]
    if there is not scene.everywhere:
        absent = scene.configurations.same(scene.without(scene.everywhere, there))
        value = scene.cells.put(value, absent, ABSENT)
    scene.values[key] = value
