"""What goes wrong when someone writes a procedure down."""

from dataclasses import replace

from guidebuild.device.acts import verbs_of
from guidebuild.device.option import Option
from guidebuild.device.record import Device
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.ink import Ink
from tests.proof.fuzz.options import condition
from tests.proof.fuzz.wishes import Wish, any_wish


def mistaken(dice: Dice, ink: Ink, device: Device, options: list[Option], acts: list[Wish]) -> None:
    """One mistake in a list of acts."""
    if not acts:
        acts.append(any_wish(dice, device))
        return
    at = dice.below(len(acts))
    match dice.below(7):
        case 0:
            del acts[at]
        case 1:
            acts.insert(at, acts[at])
        case 2:
            other = min(at + 1, len(acts) - 1)
            acts[at], acts[other] = acts[other], acts[at]
        case 3:
            acts[at] = retargeted(dice, device, acts[at])
        case 4:
            acts[at] = replace(acts[at], verb=dice.pick(verbs_of(acts[at].kind)))
        case 5:
            acts[at] = replace(acts[at], when=condition(dice, ink, options))
        case _:
            acts.insert(at, any_wish(dice, device))


def retargeted(dice: Dice, device: Device, wish: Wish) -> Wish:
    """The act on another thing of the same kind."""
    alike = [
        name for name, keys in device.names.items() if device.things[keys[0]].kind is wish.kind
    ]
    return replace(wish, targets=(dice.pick(alike),))
