"""What it must meet is there: a screw finds its parts in place, a plug its socket, a part its host."""

from guidebuild.device.acts import CLOSING, Verb
from guidebuild.device.ends import is_soft
from guidebuild.device.states import Kind
from guidebuild.device.things import Link, Part, Thing
from guidebuild.proof.asking import Asking, Lack, lack_of
from guidebuild.proof.bench import Bench
from guidebuild.proof.plain import GONE, IN, NOT_IN
from guidebuild.proof.watch import Watched


def asked_of(kind: Kind, verb: Verb) -> bool:
    """Acts that close, `start`, `offer`."""
    return verb in CLOSING and kind in (Kind.PART, Kind.FASTENER, Kind.CONNECTOR, Kind.JOINT)


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """The host of a part, the ends of a link, or all that lies between these."""
    layout = bench.layout
    match thing:
        case Part():
            return [(host, GONE) for host, _ in layout.hosts.host(thing.key)]
        case Link() if is_soft(thing):
            return [(end, GONE) for end, _ in layout.ends.of(thing)]
        case Link():
            seats = layout.ends.seats(thing)
            if any(path.apart for path in seats):
                return [(end, GONE | NOT_IN) for end, _ in layout.ends.of(thing)]
            return [(part, GONE | NOT_IN) for path in seats for part in path.parts]
        case _:
            return ()


def met(ask: Asking) -> Lack | None:
    """The parts that are not in place are to blame."""
    match ask.thing:
        case Part():
            return lack_of(_gone(ask, ask.scene.layout.hosts.host(ask.key)))
        case Link() as link if is_soft(link):
            return lack_of(_gone(ask, list(ask.scene.layout.ends.of(link))))
        case Link() as link:
            return lack_of(_not_seated(ask, link))
        case _:
            return None


def _gone(ask: Asking, parts: list[tuple[str, int]]) -> dict[str, int]:
    """Parts that are surely not here at all, on the bench or anywhere."""
    scene = ask.scene
    blames = {}
    for part, there in parts:
        bits = scene.both(scene.both(ask.where, there), scene.surely(part, GONE))
        if bits:
            blames[part] = bits
    return blames


def _not_seated(ask: Asking, link: Link) -> dict[str, int]:
    """Parts between the ends that are surely not fitted. Across two roots the ends need only be here."""
    scene = ask.scene
    blames: dict[str, int] = {}
    for path in scene.layout.ends.seats(link):
        if path.apart:
            return _gone(ask, list(scene.layout.ends.of(link)))
        for part in path.parts:
            fitted = scene.perhaps(part, IN)
            if fitted is not scene.everywhere:
                bits = scene.without(scene.both(ask.where, path.where), fitted)
                if bits:
                    blames[part] = blames.get(part, 0) | bits
    return blames
