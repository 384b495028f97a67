"""The torque at which a screw twists off: an upper bound of what a tightening torque can be, never a target.

Source: ISO 898-7:1992: MB,min = X * Rm,min * pi/16 * d3min^3, in torsion alone, coarse metric threads M1 to M10,
classes 8.8 to 12.9, not for set screws. A tightening torque holds friction too, so it may come close.
"""

from decimal import Decimal
from functools import cache

from guidebuild.device.screw import Screw
from guidebuild.device.tables import rows

STRONGEST = "12.9"
_WEAKEST = "8.8"
_BELOW = frozenset({"4.6", "4.8", "5.6", "5.8", "6.8"})  # these break earlier than 8.8
_PI_16 = Decimal("0.1963495408493620774")


@cache
def _roots() -> dict[str, Decimal]:
    return {row["thread"]: Decimal(row["root_least_mm"]) for row in rows("strength")}


@cache
def _torsion() -> dict[str, Decimal]:
    """Least strength in torsion by class, MPa."""
    return {
        row["class"]: Decimal(row["tensile_MPa"]) * Decimal(row["torsion_ratio"])
        for row in rows("strength_classes")
    }


def breaking_torque(thread: str, strength: str) -> Decimal | None:
    """Least breaking torque in N·m of a thread (`M2.5`) in a class (`8.8`); None outside the standard."""
    root, torsion = _roots().get(thread), _torsion().get(strength)
    if root is None or torsion is None:
        return None
    return torsion * _PI_16 * root**3 / 1000


def surely_breaks_at(screw: Screw) -> tuple[Decimal, str] | None:
    """The torque in N·m that this screw can't be meant to bear, and the class taken for it.

    Of a screw without a class it is that of the strongest one, so that a legitimate torque is never above it.
    """
    if screw.head == "set":
        return None
    taken = screw.strength if screw.strength in _torsion() else STRONGEST
    taken = _WEAKEST if screw.strength in _BELOW else taken
    torque = breaking_torque(screw.thread, taken or STRONGEST)
    return None if torque is None else (torque, taken or STRONGEST)
