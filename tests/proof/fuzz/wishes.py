"""An act before it is written down, so that it can still be dropped, doubled or changed."""

from dataclasses import dataclass

from guidebuild.device.acts import TABLE, Verb, verbs_of
from guidebuild.device.condition import Condition
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.device.things import Torque
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.connector import ConnectorAct
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.guide.blocks.joint import JointAct
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.blocks.power import PowerAct
from guidebuild.guide.blocks.store import StoreAct
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.ink import Ink


@dataclass(frozen=True)
class Wish:
    """`targets`, `undo`, `do_up` are ids as an author writes them."""

    kind: Kind
    verb: Verb
    targets: tuple[str, ...]
    when: Condition | None = None
    undo: tuple[str, ...] = ()
    do_up: tuple[str, ...] = ()
    torque: Torque | None = None


WRITTEN: dict[Kind, type[Act]] = {
    Kind.FASTENER: FastenerAct,
    Kind.CONNECTOR: ConnectorAct,
    Kind.JOINT: JointAct,
    Kind.STORE: StoreAct,
    Kind.POWER: PowerAct,
}


def written(ink: Ink, wish: Wish) -> Act:
    """The act as the reader would hand it over. Its words stand in the order in which they are done."""
    undo = ink.words(list(wish.undo))
    targets = ink.words(list(wish.targets))
    do_up = ink.words(list(wish.do_up))
    kind, verb, when = wish.kind, wish.verb, wish.when
    where = ink.span()
    if kind is Kind.PART:
        return PartAct(
            kind=kind,
            verb=verb,
            verb_span=where,
            targets=targets,
            when=when,
            span=where,
            block=where,
            undo=undo,
            do_up=do_up,
        )
    if kind is Kind.FASTENER:
        return FastenerAct(
            kind=kind,
            verb=verb,
            verb_span=where,
            targets=targets,
            when=when,
            span=where,
            block=where,
            torque=wish.torque,
        )
    return WRITTEN[kind](
        kind=kind, verb=verb, verb_span=where, targets=targets, when=when, span=where, block=where
    )


def any_wish(dice: Dice, device: Device) -> Wish:
    """Any act on anything that knows it."""
    name = dice.pick(list(device.names))
    kind = device.things[device.names[name][0]].kind
    return Wish(kind, dice.pick(verbs_of(kind)), (name,))


assert all(kind in WRITTEN or kind is Kind.PART for kind, _ in TABLE)
