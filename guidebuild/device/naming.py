"""What things are called in a message: by the author's names, in the bench's words.

`the cap screws (M4x10 cylinder hex 3)`, `screw near of the plate screws`, `the plug plate`, `seal cover-seal`;
without a name the id: `screw plate-screws.near (M2x4 pan TX6)`. The words are English: messages to authors are.
"""

from collections.abc import Iterable, Sequence

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER, Device
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole, Joint, Store, Thing

MOST = 4  # more than so many things are counted, not listed

_JOINTS = {"press": "press fit", "solder": "solder joint", "route": "cable guide"}
_DONE = {
    Verb.LOOSEN: "loosened",
    Verb.START: "started",
    Verb.TIGHTEN: "tightened",
    Verb.RENEW: "renewed",
    Verb.DISCONNECT: "disconnected",
    Verb.RECONNECT: "reconnected",
    Verb.LIFT: "lifted",
    Verb.LOWER: "lowered",
    Verb.OFFER: "offered",
    Verb.EXCHANGE: "exchanged",
    Verb.ADD: "added",
    Verb.CLOSE: "closed",
    Verb.SWITCH_OFF: "switched off",
    Verb.SWITCH_ON: "switched on",
}
_RELEASED = {
    "charge": "discharged",
    "spring": "relaxed",
    "pressure": "let off",
    "fluid": "drained",
    "heat": "left to cool",
}
_RESTORED = {"fluid": "filled", "calibration": "set"}


def called(device: Device, key: str) -> str:
    """One thing, as a message names it."""
    thing = device.things[key]
    match thing:
        case Hole():
            return f"{_one_of(device, thing)}{_designation(thing)}"
        case Store() if key == POWER:
            return "the power"
        case _ if thing.name is not None:
            return f"the {lowered(thing.name.text)}"
        case _:
            return f"{_sort(thing)} {thing.id}"


def listed(words: Sequence[str], most: int = MOST) -> str:
    """`a`, `a and b`, `a, b and c`; of more than `most` the rest are counted."""
    if len(words) > most:
        return f"{', '.join(words[: most - 1])} and {len(words) - most + 1} more"
    return " and ".join(filter(None, (", ".join(words[:-1]), *words[-1:])))


def all_called(device: Device, keys: Iterable[str]) -> str:
    """Several things; screws of one group are named together, a whole group by its id alone."""
    found: list[str] = []
    holes: dict[str, list[Hole]] = {}
    for key in dict.fromkeys(keys):
        thing = device.things[key]
        if isinstance(thing, Hole):
            if thing.group not in holes:
                found.append(thing.group)
            holes.setdefault(thing.group, []).append(thing)
        else:
            found.append(called(device, key))
    return listed([_holes(device, holes[word]) if word in holes else word for word in found])


def subject(device: Device, keys: Iterable[str]) -> dict[str, str]:
    """The words `thing`, `is` (or `are`) and `it` (or `them`) of a message about these things."""
    keys = tuple(dict.fromkeys(keys))
    thing = all_called(device, keys)
    several = len(keys) > 1 or _plural(thing)
    return {
        "thing": thing,
        "is": "are" if several else "is",
        "it": "them" if several else "it",
    }


def done(verb: Verb, thing: Thing) -> str:
    """What was done, as in `removed here`: `taken out` of a screw, `drained` of oil."""
    if verb is Verb.REMOVE:
        return "taken off" if thing.kind is Kind.PART else "taken out"
    if verb is Verb.REFIT:
        return "fitted" if thing.kind is Kind.PART else "put back"
    if isinstance(thing, Store) and verb in (Verb.RELEASE, Verb.RESTORE):
        words = _RELEASED if verb is Verb.RELEASE else _RESTORED
        return words.get(thing.store, "emptied" if verb is Verb.RELEASE else "restored")
    return _DONE.get(verb, "opened")


def lowered(name: str) -> str:
    """A name inside a sentence: `Plug plate` becomes `plug plate`, `USB board` stays."""
    return name[:1].lower() + name[1:] if name[1:2].islower() or len(name) == 1 else name


def _holes(device: Device, holes: Sequence[Hole]) -> str:
    if len(holes) == 1:
        return called(device, holes[0].key)
    group = device.groups.get(holes[0].group)
    name = _group_name(device, holes[0])
    if group is not None and len(holes) == len(group.holes):
        same = {_designation(hole) for hole in holes}
        whole = f"the {name}" if name else f"screws {group.id}"
        return f"{whole}{same.pop() if len(same) == 1 else ''}"
    if name:
        return f"screws {listed([hole.hole for hole in holes])} of the {name}"
    return f"screws {listed([hole.id for hole in holes])}"


def _one_of(device: Device, hole: Hole) -> str:
    """One screw: of a group with a name by this, else by its id."""
    name, group = _group_name(device, hole), device.groups.get(hole.group)
    if not name:
        return f"screw {hole.id}"
    alone = group is not None and len(group.holes) == 1
    return f"the {name}" if alone else f"screw {hole.hole} of the {name}"


def _group_name(device: Device, hole: Hole) -> str:
    group = device.groups.get(hole.group)
    return lowered(group.name.text) if group is not None and group.name is not None else ""


def _designation(hole: Hole) -> str:
    """The screw's own words, where it is the same one in every configuration."""
    words = {case.value.text for case in hole.screw}
    return f" ({words.pop()})" if len(words) == 1 else ""


def _sort(thing: Thing) -> str:
    match thing:
        case Joint(joint=kind):
            return _JOINTS.get(kind, kind)
        case _:
            return {Kind.CONNECTOR: "plug", Kind.PART: "part"}.get(thing.kind, thing.kind.value)


def _plural(name: str) -> bool:
    last = name.partition(" (")[0].rpartition(" ")[2]
    return name.startswith("the ") and last.endswith("s") and not last.endswith(("ss", "us", "is"))
