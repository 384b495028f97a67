"""All that stays the same while a guide is walked: the record to ask, the configurations, the kits, the goal."""

from dataclasses import dataclass
from functools import cached_property, reduce
from operator import or_

from guidebuild.device.condition import Is
from guidebuild.device.layout import Layout
from guidebuild.device.record import Device
from guidebuild.device.things import Part, Thing
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.guide import Guide
from guidebuild.proof.cells import Cells
from guidebuild.source.remembered import remembered


@remembered
def _layout(device: Device, configurations: Configurations) -> Layout:
    """The same for all guides of a record that are numbered alike."""
    return Layout(device, configurations.bits, configurations.everywhere)


@dataclass(frozen=True, slots=True)
class Delivery:
    """What comes with a new unit in `where`: the parts on it and the links that the kit's form lists.

    Of each, the configurations in which the record puts it on that unit.
    """

    where: int
    parts: dict[str, int]
    links: dict[str, int]


class Bench:
    """Made once a proof; from its proof it is made again with the same layout."""

    def __init__(
        self,
        guide: Guide,
        device: Device,
        configurations: Configurations,
        layout: Layout | None = None,
    ) -> None:
        self.guide = guide
        self.device = device
        self.configurations = configurations
        self.cells = Cells(configurations.everywhere)
        self.layout = layout or _layout(device, configurations)

    @cached_property
    def goal(self) -> tuple[str, ...]:
        """Keys of the parts that the goal is about, where they are anywhere."""
        return tuple(key for key, _ in self.layout.presence.parts(self.guide.goal.parts))

    @cached_property
    def others(self) -> tuple[Thing, ...]:
        """All things that are no parts."""
        things = self.device.things.values()
        return tuple(thing for thing in things if not isinstance(thing, Part))

    @cached_property
    def deliveries(self) -> dict[str, list[Delivery]]:
        """By brought part: what each form of each kit brings with it."""
        found: dict[str, list[Delivery]] = {}
        presence = self.layout.presence
        for use in self.guide.kits:
            for form in use.kit.forms:
                chosen = None
                if use.option is not None:
                    chosen = Is(use.option, frozenset({form.id}), form.span)
                where = self.configurations.bits(chosen)
                listed = [key for key, _ in presence.of(form.arrives_with)]
                for part, _ in presence.parts(use.kit.brings):
                    found.setdefault(part, []).append(self._delivery(part, where, listed))
        return found

    def _delivery(self, part: str, where: int, listed: list[str]) -> Delivery:
        """Of what is listed, only what belongs to this part: a kit may bring several."""
        layout = self.layout
        riders = {key: layout.hosts.on(key, part) for key in layout.hosts.carried(part)}
        links = {}
        for link in layout.touching(part):
            if link.key in listed:
                on_it = (
                    there if end == part else there & riders.get(end, 0)
                    for end, there in layout.ends.of(link)
                )
                links[link.key] = reduce(or_, on_it, 0) & layout.presence.where[link.key]
        return Delivery(
            where,
            {key: riders[key] for key in listed if key in riders},
            {key: links[key] for key in listed if key in links},
        )
