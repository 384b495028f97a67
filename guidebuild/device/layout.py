"""The record as a thing that can be asked: place, path, what hides, what holds, what guards."""

from collections.abc import Callable
from functools import cached_property

from guidebuild.device.between import Between
from guidebuild.device.condition import Condition
from guidebuild.device.covers import Covers
from guidebuild.device.ends import Ends
from guidebuild.device.guarding import Guarding
from guidebuild.device.hosts import Hosts
from guidebuild.device.place import Places
from guidebuild.device.presence import Presence
from guidebuild.device.record import Device
from guidebuild.device.stores import Stores
from guidebuild.device.things import Connector, Joint, Link


class Layout:
    """The static questions together. `bits` turns a condition into configurations, None into `everywhere`."""

    def __init__(
        self, device: Device, bits: Callable[[Condition | None], int], everywhere: int
    ) -> None:
        self.device = device
        self.everywhere = everywhere
        self.presence = Presence(device, bits, everywhere)
        self.hosts = Hosts(self.presence)
        self.between = Between(self.hosts)
        self.ends = Ends(self.between)
        self.places = Places(self.ends)
        self.covers = Covers(self.places)
        self.guarding = Guarding(self.places)
        self._touching: dict[str, tuple[Link, ...]] = {}
        self.stores = Stores(self.presence)

    @cached_property
    def ties(self) -> dict[str, tuple[Link, ...]]:
        """By part: the links that have it as an end."""
        found: dict[str, list[Link]] = {}
        for thing in self.device.things.values():
            if isinstance(thing, Link):
                for part, _ in self.ends.of(thing):
                    found.setdefault(part, []).append(thing)
        return {part: tuple(links) for part, links in found.items()}

    @cached_property
    def sources(self) -> tuple[Connector, ...]:
        """The plugs that feed the device, where it has them."""
        where = self.presence.where
        return tuple(one for one in self.device.connectors if one.source and where[one.key])

    @cached_property
    def carrying(self) -> tuple[Link, ...]:
        """The links that carry a function."""
        links = (thing for thing in self.device.things.values() if isinstance(thing, Link))
        return tuple(link for link in links if link.carries)

    @cached_property
    def through(self) -> dict[str, tuple[Joint, ...]]:
        """By part: the joints whose ends come together only while it is fitted."""
        found: dict[str, dict[str, Joint]] = {}
        for joint in self.device.joints:
            for path in self.ends.seats(joint):
                for part in path.parts:
                    found.setdefault(part, {})[joint.key] = joint
        return {part: tuple(joints.values()) for part, joints in found.items()}

    def touching(self, part: str) -> tuple[Link, ...]:
        """The links that tie a part or anything that the record puts on it, each once."""
        known = self._touching.get(part)
        if known is None:
            found = {link.key: link for link in self.ties.get(part, ())}
            for rider in self.hosts.carried(part):
                found.update({link.key: link for link in self.ties.get(rider, ())})
            known = self._touching[part] = tuple(found.values())
        return known
