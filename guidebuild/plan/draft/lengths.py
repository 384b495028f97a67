"""Screws that are easily mixed up: the same but for their length, and out at the same time."""

from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import combinations

from guidebuild.device.acts import Verb
from guidebuild.device.record import Device
from guidebuild.device.screw import Screw
from guidebuild.device.things import Hole
from guidebuild.plan.draft.names import listed, name
from guidebuild.plan.draft.script import Block
from guidebuild.plan.draft.work import Work
from guidebuild.proof.questions.alike import differ_only_in_length


class Lengths:
    """`out`: the keys of the screws that the guide takes out. Each group is warned of once."""

    def __init__(self, device: Device, out: Sequence[str]) -> None:
        self.device = device
        self.holes = [hole for hole in device.holes if hole.key in out and not hole.captive]
        self.twins: dict[str, dict[str, None]] = {}
        for one, other in combinations(self.holes, 2):
            if _alike(one, other):
                self.twins.setdefault(one.group, {})[other.group] = None
                self.twins.setdefault(other.group, {})[one.group] = None
        self._told: set[str] = set()

    def before(self, group: Sequence[Work]) -> Iterator[Block]:
        """A notice where the screws of a group come out."""
        for name_ in self._groups(group, Verb.REMOVE):
            if name_ not in self._told:
                self._told.add(name_)
                yield Block("caution", (self._notice(name_),))

    def after(self, group: Sequence[Work]) -> list[str]:
        """A sentence where they go back."""
        return [self._length_of(one) for one in self._groups(group, Verb.REFIT)]

    def _groups(self, works: Sequence[Work], verb: Verb) -> list[str]:
        things = (self.device.things[key] for one in works if one.verb is verb for key in one.keys)
        groups = dict.fromkeys(thing.group for thing in things if isinstance(thing, Hole))
        return [one for one in groups if one in self.twins]

    def _length_of(self, group: str) -> str:
        """`The bracket screws are 6 mm long.`, or which hole takes which."""
        holes = [hole for hole in self.holes if hole.group == group]
        called = name(self.device, holes[0].key)
        lengths = {_length(hole): None for hole in holes}
        if len(lengths) == 1:
            return f"The {called} {'are' if len(holes) > 1 else 'is'} {_mm(holes[0])} long."
        shortest = min(lengths)
        longer = [hole for hole in holes if _length(hole) != shortest]
        which = listed([hole.hole for hole in longer])
        more = f"{(_length(longer[0]) - shortest).normalize():f} mm longer"
        if len(longer) == 1:
            return f"Of the {called}, the one in hole {which} is {more}."
        return f"Of the {called}, those in holes {which} are {more}."

    def _notice(self, group: str) -> dict[str, str]:
        others = [one for one in self.twins[group] if one != group]
        words = self._length_of(group)
        if others and "long." in words:
            keys = [next(hole.key for hole in self.holes if hole.group == one) for one in others]
            alike = listed([f"the {name(self.device, key)}" for key in keys[:2]])
            verb = "look" if " are " in words else "looks"
            words = f"{words[:-1]} and {verb} like {alike}."
        return {
            "notice": words,
            "result": "In the wrong hole a screw breaks what lies below it.",
            "avoid": "Put each kind of screw into its own pocket of the tray sheet.",
        }


def _screw(hole: Hole) -> Screw | None:
    return hole.screw[0].value if hole.screw else None


def _length(hole: Hole) -> Decimal:
    screw = _screw(hole)
    return screw.length if screw is not None and screw.length is not None else Decimal(0)


def _mm(hole: Hole) -> str:
    return f"{_length(hole).normalize():f} mm"


def _alike(one: Hole, other: Hole) -> bool:
    first, second = _screw(one), _screw(other)
    return first is not None and second is not None and differ_only_in_length(first, second)
