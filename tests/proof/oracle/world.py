"""One unit on one bench: what exists in this configuration, and what its record says of it."""

from collections.abc import Iterable

from guidebuild.device.record import Device
from guidebuild.device.states import Kind
from guidebuild.device.things import Connector, Hole, Joint, Link, Part, Store, Thing
from guidebuild.guide.guide import Guide
from guidebuild.source.said import Said
from tests.proof.oracle.conditions import Answers, holds


class World:
    """Never changes. Every question speaks of what exists here; the rest counts as not written."""

    def __init__(self, guide: Guide, device: Device, answers: Answers) -> None:
        self.guide = guide
        self.device = device
        self.answers = answers
        self.things = {
            key: thing for key, thing in device.things.items() if self._exists(thing, frozenset())
        }

    def _exists(self, thing: Thing, asked: frozenset[str]) -> bool:
        if thing.key in asked:
            return True
        if not holds(thing.when, self.answers):
            return False
        asked |= {thing.key}
        match thing:
            case Part(host=Said() as host):
                return self._any(host, asked)
            case Link():
                there = [said for said in thing.ends if self._any(said, asked)]
                return len(there) >= min(2, len(thing.ends))
            case Store(inside=Said() as inside):
                return self._any(inside, asked)
            case _:
                return True

    def _any(self, said: Said, asked: frozenset[str]) -> bool:
        found = [self.device.things[key] for key in self.device.names.get(said.text, ())]
        return any(isinstance(one, Part) and self._exists(one, asked) for one in found)

    def keys(self, ids: Iterable[Said]) -> list[str]:
        """What ids mean here, in order."""
        names = self.device.names
        return [key for said in ids for key in names.get(said.text, ()) if key in self.things]

    def parts(self, ids: Iterable[Said]) -> list[str]:
        """The same, parts only."""
        return [key for key in self.keys(ids) if isinstance(self.things[key], Part)]

    def kind(self, key: str) -> Kind:
        """What a thing is."""
        return self.things[key].kind

    def all_parts(self) -> list[Part]:
        return [one for one in self.things.values() if isinstance(one, Part)]

    def links(self) -> list[Link]:
        return [one for one in self.things.values() if isinstance(one, Link)]

    def joints(self) -> list[Joint]:
        return [one for one in self.things.values() if isinstance(one, Joint)]

    def connectors(self) -> list[Connector]:
        return [one for one in self.things.values() if isinstance(one, Connector)]

    def stores(self) -> list[Store]:
        return [one for one in self.things.values() if isinstance(one, Store)]

    def sources(self) -> list[str]:
        """The plugs that feed this unit."""
        return [one.key for one in self.connectors() if one.source]

    def captive(self, key: str) -> bool:
        """A captive screw stays in its part when it is loose."""
        thing = self.things[key]
        return isinstance(thing, Hole) and thing.captive

    def soft(self, key: str) -> bool:
        """Plugs and hinges let their parts move; everything else is rigid."""
        thing = self.things[key]
        return isinstance(thing, Connector) or (isinstance(thing, Joint) and thing.joint == "hinge")

    def joint_is(self, key: str, *kinds: str) -> bool:
        """Whether a thing is a joint of one of these kinds."""
        thing = self.things[key]
        return isinstance(thing, Joint) and thing.joint in kinds
