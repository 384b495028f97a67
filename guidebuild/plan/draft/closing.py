"""The way back: what undoes each opening, what must be renewed before, and what may wait.

The way back in strict reverse always works: just before a thing is closed, the device stands as it stood just
after it was opened. `Closing.after` says what really must come before, so that a test can be put earlier.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from guidebuild.device.acts import Verb
from guidebuild.device.ends import LYING_BETWEEN, STAY_OPEN
from guidebuild.device.things import Hole, Joint, Part, Store
from guidebuild.plan.bench import Bench, Needs
from guidebuild.plan.draft.work import Work
from guidebuild.plan.openings import links_across

HARD = frozenset({"hidden", "held", "guarded", "drained", "filled", "lifted"})

_BACK = {
    Verb.LOOSEN: Verb.REFIT,  # of a captive screw, which is all that is loosened: tighten
    Verb.REMOVE: Verb.REFIT,
    Verb.DISCONNECT: Verb.RECONNECT,
    Verb.RELEASE: Verb.CLOSE,
    Verb.LIFT: Verb.LOWER,
}


@dataclass(frozen=True, slots=True)
class Closing:
    """All that is done to undo one opening; nothing, where it closes with its part. `after`: tasks closed before.

    `reopen`: what was shut again meanwhile, and must be open for it.
    """

    task: int
    works: tuple[Work, ...]
    after: frozenset[int]
    reopen: tuple[Work, ...] = ()


def with_settings(
    bench: Bench, closings: Sequence[Closing], settings: Sequence[Work]
) -> tuple[list[Closing], list[Work]]:
    """What is lost with a store is set right after that is restored; and the settings that no store loses."""
    found, left = list(closings), []
    for work in settings:
        store = bench.layout.device.things[work.keys[0]]
        emptied_by = store.emptied_by if isinstance(store, Store) else ()
        lost = {key for key, _ in bench.layout.presence.of(emptied_by)}
        at = next((n for n, one in enumerate(found) if _restores(one, lost)), None)
        if at is None:
            left.append(work)
        else:
            found[at] = replace(found[at], works=(*found[at].works, work))
    return found, left


def _restores(closing: Closing, keys: set[str]) -> bool:
    return any(work.verb is Verb.RESTORE and keys & set(work.keys) for work in closing.works)


class Back:
    """`opened`: the openings in the order in which they were done. `renewed`: what is new already."""

    def __init__(
        self,
        bench: Bench,
        needs: Needs,
        opened: Sequence[Work],
        renewed: Iterable[str] = (),
        staying_off: Sequence[str] = (),
    ) -> None:
        self.bench = bench
        self.device = bench.layout.device
        self.needs = needs
        self.opened = [work for work in opened if work.task is not None]
        self.renewed = set(renewed)
        self.place = {work.task: number for number, work in enumerate(self.opened)}
        self.off = {key: work for work in self.opened if self._is_part(work) for key in work.keys}
        self.staying_off = tuple(staying_off)
        self.gone = self._gone()

    def closings(self) -> list[Closing]:
        """In reverse order; what belongs to a part that stays off is left out."""
        found = [
            Closing(work.task or 0, tuple(self._undone(work)), self._after(work))
            for work in reversed(self.opened)
            if not self.gone & set(work.keys)
        ]
        return self._with_restored(found)

    def _is_part(self, work: Work) -> bool:
        return isinstance(self.device.things[work.keys[0]], Part)

    def _gone(self) -> set[str]:
        """The parts that stay off, what is on them, and what ties these."""
        gone = set(self.staying_off)
        for part in self.staying_off:
            gone |= {link.key for link in self.bench.layout.touching(part)}
        if not gone:
            return gone
        return gone | {store.key for store in self.device.stores if self._needs(store, gone)}

    def _needs(self, store: Store, gone: set[str]) -> bool:
        """It is in what stays off, or can't be filled without it."""
        inside = [store.inside] if store.inside is not None else []
        through = [store.through] if store.through is not None else []
        said = [*inside, *through, *store.guards]
        return bool({key for key, _ in self.bench.layout.presence.of(said)} & gone)

    def _after(self, work: Work) -> frozenset[int]:
        """Everything that could be opened only because this was open closes before it; habits have no say."""
        mine = 1 << (work.task or 0)
        later = self.opened[self.place[work.task] + 1 :]
        return frozenset(
            other.task
            for other in later
            if other.task is not None
            and any(need.tasks & mine and need.why in HARD for need in self.needs[other.task])
        )

    def _undone(self, work: Work) -> Iterator[Work]:
        things = self.device.things
        first = things[work.keys[0]]
        match first:
            case Part():
                yield from self._part(work, first)
            case Hole():
                worn = tuple(key for key in work.keys if things[key].single_use)
                if worn:
                    yield replace(work, verb=Verb.RENEW, keys=worn)
                yield replace(work, verb=_BACK[work.verb])
            case Joint():
                yield from self._joint(work, first)
            case Store() if first.filled_by or work.verb is Verb.SWITCH_OFF:
                return
            case Store():
                yield replace(work, verb=Verb.RESTORE)
            case _:
                yield replace(work, verb=_BACK[work.verb])

    def _part(self, work: Work, part: Part) -> Iterator[Work]:
        lifted = work.verb is Verb.REMOVE and self._was_lifted(work)
        if not lifted:
            for joint in self._worn_joints(work, part):
                yield replace(work, verb=Verb.RENEW, keys=(joint.key,))
        new = part.key in self.renewed
        if part.single_use and work.verb is Verb.REMOVE and not new:
            yield replace(work, verb=Verb.RENEW)
        yield replace(work, verb=Verb.OFFER if lifted else _BACK[work.verb])

    def _was_lifted(self, work: Work) -> bool:
        before = self.opened[: self.place[work.task]]
        return any(one.verb is Verb.LIFT and one.keys == work.keys for one in before)

    def _worn_joints(self, work: Work, part: Part) -> Iterator[Joint]:
        """Seals that it broke, and what else closes by itself and has to be new, before it goes on."""
        across = links_across(self.bench.layout, part.key)
        released = {key for one in self.opened for key in one.keys}
        for joint in self.device.joints:
            if not joint.single_use or joint.key in self.renewed:
                continue
            if joint.joint == "seal":
                if joint in across:
                    yield joint
            elif joint.key in released and self._closed_by(joint) == work.keys[0]:
                yield joint

    def _joint(self, work: Work, joint: Joint) -> Iterator[Work]:
        if self._closed_by(joint) is not None:
            return
        if joint.single_use and joint.key not in self.renewed:
            yield replace(work, verb=Verb.RENEW)
        yield replace(work, verb=Verb.CLOSE)

    def _closed_by(self, joint: Joint) -> str | None:
        """The part that closes it when it goes on: of those between its ends the last to go on, the first off."""
        if joint.joint in STAY_OPEN:
            return None
        between = {part for path in self.bench.layout.ends.seats(joint) for part in path.parts}
        between |= {end for end, _ in self.bench.layout.ends.of(joint)} & set(self.off)
        first = (one.keys[0] for one in self.opened if self._is_part(one))
        apart = [key for key in first if key in between]
        lying = joint.joint in LYING_BETWEEN
        return (apart[-1] if lying else apart[0]) if apart else None

    def _with_restored(self, found: list[Closing]) -> list[Closing]:
        """A drained store is filled when all that it guards is in, and its drain shut."""
        for closing in list(found):
            stores = [work for work in closing.works if work.verb is Verb.RESTORE]
            if stores:
                place = found.index(
                    closing
                )  # never earlier than in reverse: pressure comes after oil
                found.remove(closing)
                full = self._when_full(found, closing, stores[0].keys[0])
                found.insert(max(place, full), closing)
        return found

    def _when_full(self, found: list[Closing], closing: Closing, key: str) -> int:
        store = self.device.things[key]
        guards = store.guards if isinstance(store, Store) else ()
        through = [store.through] if isinstance(store, Store) and store.through else []
        asked = {one for one, _ in self.bench.layout.presence.of([*guards, *through])}
        places = [
            number
            for number, one in enumerate(found)
            if one.task in closing.after or asked & {key for work in one.works for key in work.keys}
        ]
        return max(places, default=-1) + 1
