"""What things are called in a draft, and the small words round a name."""

from collections.abc import Iterable, Sequence

from guidebuild.device.naming import lowered
from guidebuild.device.record import Device
from guidebuild.device.things import Hole, Link


def name(device: Device, key: str) -> str:
    """The author's name inside a sentence; without one, the id's words. Of a screw, the name of its group."""
    thing = device.things[key]
    if isinstance(thing, Hole):
        group = device.groups.get(thing.group)
        said = group.name.text if group is not None and group.name is not None else thing.group
        return lowered(said).replace("-", " ")
    return lowered(thing.name.text) if thing.name is not None else thing.id.replace("-", " ")


def title(words: str) -> str:
    """With a capital at its head."""
    return words[:1].upper() + words[1:]


def names(device: Device, keys: Iterable[str]) -> str:
    """Several things, each once: `the live tag L, the neutral tag N and the lamp plug P2`."""
    return listed([f"the {one}" for one in dict.fromkeys(name(device, key) for key in keys)])


def listed(words: Sequence[str]) -> str:
    """`a`, `a and b`, `a, b and c`."""
    return " and ".join(filter(None, (", ".join(words[:-1]), *words[-1:])))


def plural(words: str) -> bool:
    """Whether a name takes `are`: `cover screws`, `keys and display`; not `lens`, `gas`."""
    last = words.rpartition(" ")[2]
    return " and " in words or (
        last.endswith("s") and not last.endswith(("ss", "us", "is", "as", "ens"))
    )


def noun(device: Device) -> str:
    """What the device is called once it is known: `printer` for `Larch P2 label printer`."""
    words = device.name.text.split()
    last = words[-1] if words else ""
    plain = len(words) > 1 and last.isalpha() and last.islower()
    return last if plain else "device"


def shared_end(device: Device, links: Sequence[str], among: Iterable[str] = ()) -> str | None:
    """The part that all these plugs join, where there is one; of several one of `among`, else the first."""
    ends = [
        {key for said in thing.ends for key in device.names.get(said.text, ())}
        for one in links
        if isinstance(thing := device.things[one], Link)
    ]
    common = set.intersection(*ends) if ends else set()
    liked = [one for one in among if one in common]
    return next(iter(liked), None) or next((p.key for p in device.parts if p.key in common), None)
