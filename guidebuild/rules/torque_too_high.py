"""The torque is higher than the one at which the screw breaks.

It is a slip of the decimal point or of the unit: the screw twists off, and its shank stays in the
hole. Of a screw without a property class the limit of the strongest class (12.9) is taken, so that
no torque that can be meant is told.

Source: ISO 898-7:1992, the formula for the least breaking torque, M1 to M10; strengths by ISO
898-1:2013. The least root diameters are restated from tables of ISO 965.
"""

from collections.abc import Iterator
from decimal import Decimal

from guidebuild.device.strength import surely_breaks_at
from guidebuild.device.units import amount
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.once import once
from guidebuild.proof.questions.torques import Asked, torques
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{torque} is more than `{screw}` bears: class {strength} can break at {limit} N·m"

HELP = "check the decimal point and the unit; where the figure is the maker's, check the thread"


def check(proof: Proof) -> Iterator[Hit]:
    found = (_breaks(asked) for asked in torques(proof))
    yield from once(hit for hit in found if hit is not None)


def _breaks(asked: Asked) -> Hit | None:
    screw = asked.one.screw
    torque, limit = amount(asked.torque, "torque"), surely_breaks_at(screw)
    if torque is None or limit is None or torque <= limit[0]:
        return None
    words = {
        "torque": f"{asked.torque.value:f} {asked.torque.unit}",
        "screw": screw.text,
        "strength": limit[1],
        "limit": _two_figures(limit[0]),
    }
    related = (Related(screw.span or asked.one.hole.span, "the screw"),)
    return Hit(asked.torque.span, words, related, asked.where)


def _two_figures(value: Decimal) -> str:
    return f"{Decimal(f'{value:.2g}'):f}"
