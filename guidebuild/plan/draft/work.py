"""One act that a draft will write: on which things, in which configurations, and which opening it is or undoes."""

from collections.abc import Iterable
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole


@dataclass(frozen=True, slots=True)
class Work:
    """`task`: the number of the opening in the plan's graph; None for what is no opening."""

    verb: Verb
    keys: tuple[str, ...]
    where: int
    task: int | None = None

    def kind(self, device: Device) -> Kind:
        """What it is done to: all its things are of one kind."""
        return device.things[self.keys[0]].kind


def ids(device: Device, keys: Iterable[str]) -> tuple[str, ...]:
    """Keys as an author writes them: a whole group by its name."""
    keys = list(keys)
    found: dict[str, None] = {}
    for key in keys:
        thing = device.things[key]
        group = device.groups.get(thing.group) if isinstance(thing, Hole) else None
        whole = group is not None and set(group.holes) <= set(keys)
        found[group.id if group is not None and whole else thing.id] = None
    return tuple(found)
