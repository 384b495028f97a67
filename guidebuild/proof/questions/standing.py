"""How the device stands at a moment: live, open."""

from collections.abc import Mapping

from guidebuild.device.record import POWER, Device
from guidebuild.device.states import State
from guidebuild.device.things import Link, Store
from guidebuild.proof.proof import Proof, Snapshot
from guidebuild.source.remembered import remembered


def live(proof: Proof, snapshot: Snapshot, where: int) -> int:
    """The configurations of `where` in which power is surely on; none in a device that nothing feeds."""
    if not has_sources(proof.device):
        return 0
    return where & snapshot.surely(POWER, State.IN)


@remembered
def has_sources(device: Device) -> bool:
    """Whether anything feeds the device."""
    return any(plug.source for plug in device.connectors)


def opened(proof: Proof, snapshot: Snapshot, where: int) -> int:
    """The configurations of `where` in which a part that was fitted at the start is surely off or lifted."""
    found = 0
    for part in proof.device.parts:
        began = proof.start.surely(part.key, State.IN)
        found |= began & snapshot.surely(part.key, State.OUT | State.HALF)
    return found & where


def guarded(proof: Proof, key: str) -> bool:
    """Whether something of the device (a mains plug, a fill) may only be closed while this is in."""
    return key in _guards(proof.device)


@remembered
def _guards(device: Device) -> frozenset[str]:
    return frozenset(
        key
        for thing in device.things.values()
        if isinstance(thing, Link | Store)
        for said in thing.guards
        for key in device.names.get(said.text, ())
    )


@remembered
def holes_at(device: Device) -> Mapping[str, tuple[str, ...]]:
    """By part: the keys of the holes whose screws have it as an end."""
    found: dict[str, dict[str, None]] = {}
    for hole in device.holes:
        for end in hole.ends:
            for part in device.names.get(end.text, ()):
                found.setdefault(part, {})[hole.key] = None
    return {part: tuple(holes) for part, holes in found.items()}
