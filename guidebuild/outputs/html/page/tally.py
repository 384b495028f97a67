"""What is out, open and off after a step, as it lies in the pockets of the tray and on the bench."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import partial
from typing import TypeVar

from guidebuild.device.record import POWER
from guidebuild.device.states import State
from guidebuild.device.things import Store, Thing
from guidebuild.outputs.html.page.counting import count
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.when import When
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage, Snapshot
from guidebuild.source.remembered import remembered
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
    """`screws` says how many are out, then lists that may be empty. `fed`: the device has power, or may have."""

    screws: tuple[Held, ...]
    pockets: tuple[Pocket, ...]
    plugs: tuple[Item, ...]
    parts: tuple[Item, ...]
    renew: tuple[Item, ...]
    stores: tuple[Item, ...]
    fed: bool = True
    has_plugs: bool = True

    @property
    def empty(self) -> bool:
        """Whether the tray is surely empty."""
        return all(held.count == 0 for held in self.screws)


def tally(reading: Reading, passage: Passage) -> Tally:
    """The tally after a step, in every configuration that shows it."""
    among = passage.shown or reading.configurations.everywhere
    moment = _Moment(reading, passage.after, among)
    before = _Moment(reading, passage.before, among)
    held = moment.held()
    return Tally(
        screws=moment.told(held[""]),
        pockets=tuple(moment.pockets(held, before)),
        plugs=tuple(moment.plugs()),
        parts=tuple(moment.parts()),
        renew=tuple(moment.renew()),
        stores=tuple(moment.stores()),
        fed=_powered(reading),
        has_plugs=bool(reading.device.connectors),
    )


@dataclass(frozen=True, slots=True)
class _Moment:
    reading: Reading
    snapshot: Snapshot
    among: int

    def surely(self, key: str, state: State) -> int:
        """Where a thing surely is in this one state; most things are so everywhere or nowhere."""
        value = self.snapshot.values[key]
        if isinstance(value, int):
            return self.snapshot.everywhere & self.among if value == state.value else 0
        return value.get(state.value, 0) & self.snapshot.everywhere & self.among

    def item(self, words: Callable[[], Text], where: int) -> Iterator[Item]:
        """The item, where there is any configuration for it; only then its words are made."""
        if where:
            yield Item(words(), self.reading.when(where, self.among))

    def held(self) -> dict[str, dict[int, int]]:
        """How many screws of each number are out; under `` those of any number."""
        holds: dict[str, list[int]] = {"": []}
        for key, numbers in _loose(self.reading):
            out = self.surely(key, State.OUT)
            for number, where in numbers:
                holds.setdefault(number, []).append(out & where)
                holds[""].append(out & where)
        return {number: count(some, self.among) for number, some in holds.items()}

    def pockets(self, held: Mapping[str, dict[int, int]], before: "_Moment") -> Iterator[Pocket]:
        """Every pocket of the guide, in order."""
        earlier = before.held()
        for one in self.reading.labels.screws:
            if one.number in held:
                now = held[one.number]
                new = max(now) > max(earlier[one.number], default=0)
                yield Pocket(one.number, self.told(now), new)

    def told(self, counts: dict[int, int]) -> tuple[Held, ...]:
        """The counts, each with the configurations in which it is so."""
        return tuple(
            Held(number, self.reading.when(where, self.among)) for number, where in counts.items()
        )

    def plugs(self) -> Iterator[Item]:
        """What is unplugged."""
        for plug in _worked(self.reading, self.reading.device.connectors):
            said = partial(self._plug, plug.key)
            yield from self.item(said, self.surely(plug.key, State.OUT))

    def _plug(self, key: str) -> Text:
        """What is printed on it says enough."""
        if self.reading.is_printed(key):
            return text(self.reading.labels.of(key), Mark.REFERENCE)
        return self.reading.named(key)

    def parts(self) -> Iterator[Item]:
        """What is off, and what is lifted."""
        for part in _worked(self.reading, self.reading.device.parts):
            if not part.packing:
                named = partial(self.reading.named, part.key)
                yield from self.item(named, self.surely(part.key, State.OUT))
                lifted = partial(self._with_word, part.key, "tally.lifted")
                yield from self.item(lifted, self.surely(part.key, State.HALF))

    def renew(self) -> Iterator[Item]:
        """What is worn and must be renewed, and what never closes by itself."""
        for joint in _worked(self.reading, self.reading.device.joints):
            named = partial(self.reading.named, joint.key)
            yield from self.item(named, self.surely(joint.key, State.WORN))
            if joint.joint in _LIE_OPEN:
                opened = partial(self._with_word, joint.key, "tally.open")
                yield from self.item(opened, self.surely(joint.key, State.OUT))
        for key in self.reading.labels.loose:
            yield from self.item(partial(self.reading.named, key), self.surely(key, State.WORN))

    def _with_word(self, key: str, word: str) -> Text:
        """`A cover lifted`."""
        said = text(self.reading.say.plain(word), Mark.SOFT)
        return joined([self.reading.named(key), said], " ")

    def stores(self) -> Iterator[Item]:
        """Power, and what is charged, tensioned or filled; a calibration only when it is to be set."""
        for store in self.reading.device.stores:
            if store.key == POWER and not _powered(self.reading):
                continue
            sort = "power" if store.key == POWER else store.store
            for state, word in ((State.IN, "full"), (State.OUT, "empty")):
                key = f"tally.{sort}.{word}"
                if self.reading.say.has(key):
                    said = partial(self._store, store, key)
                    yield from self.item(said, self.surely(store.key, state))

    def _store(self, store: Store, key: str) -> Text:
        power = store.key == POWER
        name = "" if power else self.reading.inside(self.reading.store_name(store))
        return self.reading.say(key, name=name)


@remembered
def _worked(reading: Reading, things: tuple[T, ...]) -> tuple[T, ...]:
    """Those that the guide works on, in the order of the work."""
    known = {thing.key: thing for thing in things}
    return tuple(known[key] for key in reading.labels.of_thing if key in known)


@remembered
def _loose(reading: Reading) -> tuple[tuple[str, tuple[tuple[str, int], ...]], ...]:
    """The holes whose screws are laid on the tray, each with its numbers and where it has them."""
    labels = reading.labels
    return tuple(
        (key, tuple((one.number, where) for one, where in labels.of_hole[key]))
        for key in labels.loose
    )


@remembered
def _powered(reading: Reading) -> bool:
    """Every record has a power store; where nothing feeds the device and no act switches it, none is told."""
    return reading.is_fed or any(
        isinstance(one.doing, Move) and one.doing.thing == POWER
        for passage in reading.proof.passages
        for one in passage.walked
    )
