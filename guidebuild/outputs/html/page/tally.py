"""What is out, open and off after a step, as it lies in the pockets of the tray and on the bench."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TypeVar

from guidebuild.device.record import POWER
from guidebuild.device.states import State
from guidebuild.device.things import Hole, Thing
from guidebuild.outputs.html.page.counting import count
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.when import When
from guidebuild.proof.proof import Passage, Snapshot
from guidebuild.translate.messages.text import Mark, Text, joined, text

T = TypeVar("T", bound=Thing)

_LIE_OPEN = frozenset({"solder", "tape", "bead", "route"})  # never close with their part


@dataclass(frozen=True, slots=True)
class Held:
    """So many screws, in some configurations."""

    count: int
    when: When | None


@dataclass(frozen=True, slots=True)
class Pocket:
    """A pocket of the tray; `new` where this step filled it."""

    number: str
    held: tuple[Held, ...]
    new: bool


@dataclass(frozen=True, slots=True)
class Item:
    """Something that is open, off or live."""

    words: Text
    when: When | None


@dataclass(frozen=True, slots=True)
class Tally:
    """`screws` says how many are out; the rest are lists that may be empty."""

    screws: tuple[Held, ...]
    pockets: tuple[Pocket, ...]
    plugs: tuple[Item, ...]
    parts: tuple[Item, ...]
    renew: tuple[Item, ...]
    stores: tuple[Item, ...]

    @property
    def empty(self) -> bool:
        """Whether the tray is surely empty."""
        return all(held.count == 0 for held in self.screws)


def tally(reading: Reading, passage: Passage) -> Tally:
    """The tally after a step, in every configuration that shows it."""
    among = passage.shown or reading.configurations.everywhere
    moment = _Moment(reading, passage.after, among)
    before = _Moment(reading, passage.before, among)
    return Tally(
        screws=moment.screws(),
        pockets=tuple(moment.pockets(before)),
        plugs=tuple(moment.plugs()),
        parts=tuple(moment.parts()),
        renew=tuple(moment.renew()),
        stores=tuple(moment.stores()),
    )


def loose_screws(reading: Reading) -> list[Hole]:
    """The screws that this guide takes out and lays on the tray."""
    holes = (reading.device.things[key] for key in reading.labels.of_hole)
    return [hole for hole in holes if isinstance(hole, Hole) and not hole.captive]


@dataclass(frozen=True, slots=True)
class _Moment:
    reading: Reading
    snapshot: Snapshot
    among: int

    def surely(self, key: str, states: State) -> int:
        """Where a thing surely is so."""
        return self.snapshot.surely(key, states) & self.among

    def item(self, words: Text, where: int) -> Iterator[Item]:
        """The item, where there is any configuration for it."""
        if where:
            yield Item(words, self.reading.when(where, self.among))

    def held(self, number: str | None) -> dict[int, int]:
        """How many screws of a number (or of any) are out."""
        holds = (
            self.surely(hole.key, State.OUT) & where
            for hole in loose_screws(self.reading)
            for one, where in self.reading.labels.of_hole[hole.key]
            if number is None or one.number == number
        )
        return count(holds, self.among)

    def screws(self) -> tuple[Held, ...]:
        """How many are out in all."""
        return self._told(self.held(None))

    def pockets(self, before: "_Moment") -> Iterator[Pocket]:
        """Every pocket of the guide, in order."""
        loose = {
            one.number
            for hole in loose_screws(self.reading)
            for one, _ in self.reading.labels.of_hole[hole.key]
        }
        for one in self.reading.labels.screws:
            if one.number in loose:
                now = self.held(one.number)
                new = max(now) > max(before.held(one.number), default=0)
                yield Pocket(one.number, self._told(now), new)

    def _told(self, counts: dict[int, int]) -> tuple[Held, ...]:
        return tuple(
            Held(number, self.reading.when(where, self.among)) for number, where in counts.items()
        )

    def plugs(self) -> Iterator[Item]:
        """What is unplugged."""
        for plug in self._worked(self.reading.device.connectors):
            label = text(self.reading.labels.of(plug.key), Mark.REFERENCE)
            said = label if self.reading.is_printed(plug.key) else self.reading.named(plug.key)
            yield from self.item(said, self.surely(plug.key, State.OUT))

    def parts(self) -> Iterator[Item]:
        """What is off, and what is lifted."""
        say = self.reading.say
        for part in self._worked(self.reading.device.parts):
            if part.packing:
                continue
            name = self.reading.named(part.key)
            yield from self.item(name, self.surely(part.key, State.OUT))
            lifted = joined([name, text(say.plain("tally.lifted"), Mark.SOFT)], " ")
            yield from self.item(lifted, self.surely(part.key, State.HALF))

    def renew(self) -> Iterator[Item]:
        """What is worn and must be renewed, and what never closes by itself."""
        for joint in self._worked(self.reading.device.joints):
            worn = self.surely(joint.key, State.WORN)
            yield from self.item(self.reading.named(joint.key), worn)
            if joint.joint in _LIE_OPEN:
                opened = joined(
                    [self.reading.named(joint.key), self.reading.say("tally.open")], " "
                )
                yield from self.item(opened, self.surely(joint.key, State.OUT))
        for hole in loose_screws(self.reading):
            worn = self.surely(hole.key, State.WORN)
            yield from self.item(self.reading.named(hole.key), worn)

    def stores(self) -> Iterator[Item]:
        """Power, and what is charged, tensioned or filled; a calibration only when it is to be set."""
        say = self.reading.say
        for store in self.reading.device.stores:
            power = store.key == POWER
            name = "" if power else self.reading.inside(self.reading.store_name(store))
            sort = "power" if power else store.store
            for state, word in ((State.IN, "full"), (State.OUT, "empty")):
                key = f"tally.{sort}.{word}"
                if say.has(key):
                    yield from self.item(say(key, name=name), self.surely(store.key, state))

    def _worked(self, things: tuple[T, ...]) -> Iterator[T]:
        """Those that the guide works on, in the order of the work."""
        known = {thing.key: thing for thing in things}
        return (known[key] for key in self.reading.labels.of_thing if key in known)
