"""The torques that a guide has its reader reach: the act's own, else the record's."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.quantity import Quantity
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cases import values
from guidebuild.proof.questions.screws_used import TIGHTENED, Driven, driven


@dataclass(frozen=True, slots=True)
class Asked:
    """A figure at which a screw is tightened, in `where`."""

    one: Driven
    torque: Quantity
    where: int


def torques(proof: Proof) -> Iterator[Asked]:
    """Every figure at every tightening act, in document order."""
    for one in driven(proof, TIGHTENED):
        act = one.move.act
        if isinstance(act, FastenerAct) and act.torque is not None:
            if act.torque.figure is not None:
                yield Asked(one, act.torque.figure, one.where)
            continue
        for said, where in values(proof, one.hole.torque, one.where):
            if said.figure is not None:
                yield Asked(one, said.figure, where)
