"""Nothing holds the part any more: no link ties what rides on it to what does not."""

from guidebuild.device.acts import Verb
from guidebuild.device.ends import holds_while, is_soft
from guidebuild.device.states import Kind
from guidebuild.device.things import Joint, Link, Thing
from guidebuild.proof.asking import Asking, Lack, lack_of
from guidebuild.proof.bench import Bench
from guidebuild.proof.bodies import ties
from guidebuild.proof.plain import LEFT
from guidebuild.proof.watch import Watched

_LEAVING = (Verb.LIFT, Verb.REMOVE, Verb.EXCHANGE, Verb.RENEW)


def asked_of(kind: Kind, verb: Verb) -> bool:
    """Parts that leave their place, or go away for good."""
    return kind is Kind.PART and verb in _LEAVING


def watched(bench: Bench, verb: Verb, thing: Thing) -> Watched:
    """What ties it, or what is on it, and does not let go."""
    links = bench.layout.touching(thing.key)
    return [(link.key, int(holds_while(link))) for link in links if not lets_go(link, verb)]


def free(ask: Asking) -> Lack | None:
    """Every link that surely holds is to blame; a seal is broken by the part itself, a plug may hang on.

    Of what is left on the old unit this is asked for taking it off; exchanged, it just stays there.
    """
    scene = ask.scene
    blames: dict[str, int] = {}
    for link in scene.layout.touching(ask.key):
        if lets_go(link, ask.verb):
            continue
        holding = int(holds_while(link))
        bits = scene.both(ask.usual, scene.surely(link.key, holding))
        if bits:
            bits = scene.both(bits, ties(scene, link, ask.key))
        if ask.left and ask.verb is Verb.REMOVE:
            held = scene.both(ask.left, scene.surely(link.key, holding | LEFT))
            bits |= held & ties(scene, link, ask.key, LEFT, 0) if held else 0
        if bits:
            blames[link.key] = bits
    return lack_of(blames) if blames else None


def lets_go(link: Link, verb: Verb) -> bool:
    """Whether a link that holds is no hindrance to lifting or removing a part."""
    if verb is Verb.LIFT and is_soft(link):
        return True
    return verb in (Verb.LIFT, Verb.REMOVE) and isinstance(link, Joint) and link.joint == "seal"
