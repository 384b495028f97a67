"""What the walk found at one word of the author's, joined: four screws of one group are one mistake."""

from collections.abc import Callable, Hashable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import TypeVar

from guidebuild.device.naming import all_called, subject
from guidebuild.device.record import Device
from guidebuild.device.states import HOLDING, State, word_for
from guidebuild.device.things import Hole, Link, Thing
from guidebuild.guide.step import Step
from guidebuild.proof.hit import Hit
from guidebuild.proof.mistake import Ending, Move, Need, Unmet
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import last_move, place
from guidebuild.source.finding import Related
from guidebuild.source.span import Span

_WORST = (State.WORN, State.OUT, State.HALF)  # of several states the one to speak of
T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Mistake:
    """Unmet needs of one kind at one place. `where` and `blames` are those of all of them."""

    first: Unmet
    span: Span
    things: tuple[str, ...]
    blames: tuple[str, ...]
    where: int

    @property
    def move(self) -> Move:
        """The act; only of needs that acts have (AssertionError for a check: our own mistake)."""
        assert isinstance(self.first.doing, Move)
        return self.first.doing

    def words(self, device: Device) -> dict[str, str]:
        """`thing`, `is` of what is worked on; `blame`, `blame_is` of what stands in the way."""
        blame = subject(device, self.blames)
        return {
            **subject(device, self.things),
            "blame": blame["thing"],
            "blame_is": blame["is"],
        }

    def hit(self, proof: Proof, related: tuple[Related, ...] = (), **more: str) -> Hit:
        """The place to speak of, with the words above and some more."""
        among = shown(proof, self.first.step)
        return Hit(self.span, self.words(proof.device) | more, related, self.where, among)


@dataclass(frozen=True, slots=True)
class Loose:
    """Things that are not as they must be at the end and that one word took last."""

    first: Ending
    span: Span
    things: tuple[str, ...]
    where: int

    def hit(self, proof: Proof, **more: str) -> Hit:
        """The place to speak of, with the words `thing`, `is`, `state`, `wanted`, `id` and `end` (what the front matter
        would say of it), and some more."""
        kind = proof.device.things[self.first.thing].kind
        words = subject(proof.device, self.things) | {
            "state": word_for(kind, self.first.found),
            "wanted": word_for(kind, self.first.wanted),
            "id": written(proof, self.things),
            "end": word_for(
                kind, next((one for one in _WORST if one in self.first.found), State.OUT)
            ),
        }
        among = shown(proof, self.first.last.step) if self.first.last else None
        return Hit(self.span, words | more, (), self.where, among)


def unmet(proof: Proof, *needs: Need) -> Iterator[Mistake]:
    """Every place where one of these needs surely fails; what only a walk after a remedy showed is not among them."""
    mine = [one for one in proof.unmet if one.need in needs and one.after is None]
    for group in _groups(mine, lambda one: (place_of(one), one.step.id, one.need)):
        yield Mistake(
            first=group[0],
            span=place_of(group[0]),
            things=tuple(dict.fromkeys(one.thing for one in group)),
            blames=tuple(dict.fromkeys(key for one in group for key in one.blames)),
            where=_union(one.where for one in group),
        )


def endings(proof: Proof, pick: Callable[[Ending, Thing], bool]) -> Iterator[Loose]:
    """Every place from which something is left wrong at the end, of those that `pick` takes."""
    mine = [
        one
        for one in proof.endings
        if one.after is None and pick(one, proof.device.things[one.thing])
    ]
    for group in _groups(mine, lambda one: (ending_place(proof, one), one.found)):
        yield Loose(
            first=group[0],
            span=ending_place(proof, group[0]),
            things=tuple(dict.fromkeys(one.thing for one in group)),
            where=_union(one.where for one in group),
        )


def falls_short(ending: Ending) -> bool:
    """Whether something that must be in at the end is loose, out or worn, and is still here."""
    return (
        ending.because in ("state", "ends")
        and bool(ending.wanted & HOLDING)
        and not ending.found & ~(State.HALF | State.OUT | State.WORN)
    )


def place_of(unmet: Unmet) -> Span:
    """The author's word at which a need fails."""
    return place(unmet.doing) if isinstance(unmet.doing, Move) else unmet.span


def ending_place(proof: Proof, ending: Ending) -> Span:
    """The act that took it last; without one, what the guide says of the end, or the guide's goal."""
    said = proof.guide.state_spans.get(proof.device.things[ending.thing].id)
    if ending.because == "ends" and said is not None:
        return said
    last = ending.last or closed_over(proof, ending)
    return place(last) if last and ending.because != "goal" else proof.guide.goal.span


def closed_over(proof: Proof, ending: Ending) -> Move | None:
    """The act that brought the parts of a link together again, last of all."""
    thing = proof.device.things[ending.thing]
    ends = [said.text for said in thing.ends] if isinstance(thing, Link) else []
    keys = [key for end in ends for key in proof.device.names.get(end, ())]
    moves = (last_move(proof, key, HOLDING, None, ending.where) for key in keys)
    return next((move for move in moves if move), None)


def shown(proof: Proof, step: Step) -> int | None:
    """The configurations in which a step is shown; None where it was not walked."""
    found = [one.shown for one in proof.passages if one.step is step]
    return _union(found) if found else None


def named(proof: Proof, keys: Iterable[str]) -> str:
    """Things of this proof's device by name."""
    return all_called(proof.device, keys)


def written(proof: Proof, keys: Sequence[str]) -> str:
    """How an author writes these things where one word will do: a whole group by its id, else the first of them."""
    things = [proof.device.things[key] for key in keys]
    groups = {one.group for one in things if isinstance(one, Hole)}
    return groups.pop() if len(groups) == 1 and len(things) > 1 else things[0].id


def _groups(all_of: Iterable[T], key: Callable[[T], Hashable]) -> Iterator[list[T]]:
    groups: dict[Hashable, list[T]] = {}
    for one in all_of:
        groups.setdefault(key(one), []).append(one)
    yield from groups.values()


def _union(bits: Iterable[int]) -> int:
    total = 0
    for one in bits:
        total |= one
    return total
