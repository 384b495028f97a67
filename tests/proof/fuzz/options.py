"""Random options, and conditions on them."""

from guidebuild.device.condition import Both, Condition, Either, Is, Not
from guidebuild.device.option import Option, Origin, Value
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.ink import Ink


def option(ink: Ink, name: str, values: list[str], origin: Origin) -> Option:
    """An option with these answers."""
    answers = tuple(Value(value, ink.said(value)) for value in values)
    return Option(name, ink.said(name), answers, origin, ink.span())


def options(dice: Dice, ink: Ink) -> list[Option]:
    """Up to two questions of two or three answers."""
    names = ["revision", "region", "seen"][: dice.number(0, 2)]
    return [
        option(ink, name, ["a", "b", "c"][: dice.number(2, 3)], Origin.DEVICE) for name in names
    ]


def condition(dice: Dice, ink: Ink, among: list[Option], depth: int = 1) -> Condition | None:
    """A condition on one or two of the options; None without options."""
    if not among:
        return None
    asked = dice.pick(among)
    values = [value.id for value in asked.values]
    chosen = dice.some(values[1:], 30) or [dice.pick(values)]
    leaf: Condition = Is(asked.id, frozenset(chosen), ink.span())
    if dice.often(20):
        leaf = Not(leaf)
    if depth and dice.often(20):
        other = condition(dice, ink, among, depth - 1)
        if other is not None:
            return Both((leaf, other)) if dice.often(50) else Either((leaf, other))
    return leaf


def perhaps(dice: Dice, ink: Ink, among: list[Option], per_cent: int) -> Condition | None:
    """Most things have no condition."""
    return condition(dice, ink, among) if dice.often(per_cent) else None


def both(one: Condition | None, other: Condition | None) -> Condition | None:
    """Where both hold."""
    if one is None or other is None:
        return other if one is None else one
    return Both((one, other))
