"""Values that no condition tells apart become one before anything is numbered."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from guidebuild.device.condition import Condition, leaves
from guidebuild.device.option import Option


@dataclass(frozen=True, slots=True)
class Axis:
    """An option with its values in classes: all values of one class are the same to every condition."""

    option: str
    classes: tuple[tuple[str, ...], ...]

    def class_of(self, values: frozenset[str]) -> tuple[int, ...] | None:
        """The numbers of the classes that these values fill, or None where they would split one."""
        inside = []
        for number, members in enumerate(self.classes):
            if values.issuperset(members):
                inside.append(number)
            elif not values.isdisjoint(members):
                return None
        return tuple(inside)


def axes(options: Sequence[Option], conditions: Iterable[Condition]) -> tuple[Axis, ...]:
    """One axis an option, in the options' order; an option that nothing asks has one class."""
    sets: dict[str, set[frozenset[str]]] = {}
    for condition in set(conditions):
        for leaf in leaves(condition):
            sets.setdefault(leaf.option, set()).add(leaf.values)
    return tuple(_axis(option, tuple(sets.get(option.id, ()))) for option in options)


def _axis(option: Option, sets: tuple[frozenset[str], ...]) -> Axis:
    groups: dict[tuple[bool, ...], list[str]] = {}
    for value in option.values:
        signature = tuple(value.id in one for one in sets)
        groups.setdefault(signature, []).append(value.id)
    return Axis(option.id, tuple(tuple(group) for group in groups.values()))
