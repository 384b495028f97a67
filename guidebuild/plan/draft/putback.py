"""The second half of a guide whose author has written the first: what it took apart, put back and tried."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from guidebuild.device.acts import Verb
from guidebuild.device.states import State
from guidebuild.device.things import Store
from guidebuild.guide.guide import Guide
from guidebuild.plan.bench import Bench
from guidebuild.plan.draft.closing import Back, Closing, with_settings
from guidebuild.plan.draft.desk import Desk
from guidebuild.plan.draft.halves import FirstHalf, SecondHalf
from guidebuild.plan.draft.history import History, history, reopening
from guidebuild.plan.draft.lengths import Lengths
from guidebuild.plan.draft.new_unit import new, prepare
from guidebuild.plan.draft.script import Stage, Step
from guidebuild.plan.draft.shared import ending, known
from guidebuild.plan.draft.trials import is_outside, trials
from guidebuild.plan.draft.work import Work
from guidebuild.proof.proof import Proof


def put_back(proof: Proof, guides: Sequence[Guide]) -> list[Stage]:
    """The stages that are missing. `guides`: those of the device, for the stages that they share."""
    return list(_PutBack(proof, guides).stages())


class _PutBack:
    def __init__(self, proof: Proof, guides: Sequence[Guide]) -> None:
        self.proof, self.guides = proof, guides
        self.device, self.layout = proof.device, proof.layout
        self.bench = Bench(proof.layout)
        goal = proof.guide.goal
        self.parts = [key for key, _ in self.layout.presence.parts(goal.parts)]
        self.part = self.parts[0] if self.parts else None
        self.verb = goal.verb
        self.told: History = history(proof, self.bench)
        self.desk = Desk(proof.layout, proof.configurations, self.part)
        self.desk.take(step.id for step in proof.guide.steps)
        out = [key for work in self.told.opened for key in work.keys]
        self.desk.lengths = Lengths(self.device, out)

    def stages(self) -> Iterator[Stage]:
        """What the goal's part still needs, then the closings with their tests."""
        gone = self.parts if self.verb == "remove" else ()
        new = self.told.renewed | self.told.exchanged
        back = Back(self.bench, self.bench.needs, self.told.opened, new, gone)
        closings = reopening(self.bench, self.told, self._without_plugs_outside(back.closings()))
        closings, settings = with_settings(self.bench, closings, self._emptied(back.gone))
        begun = self._begun()
        if not any(one.works for one in closings) and not begun:
            return
        found = trials(self.bench, self.bench.needs, self.told.opened, closings)
        end = ending(known(self.guides, self.device), closings)
        if end is not None:
            fed = tuple(one for one in found.fed if one.function not in end.tests)
            found = replace(found, fed=fed)
        half = SecondHalf(
            self.desk, self.bench, closings, found, self.told.opened, settings, frozenset(back.gone)
        )
        half.begin = begun
        first = FirstHalf(self.desk, self.bench, self.told.opened, self.parts)
        fitted = [work.task for work in self.told.opened[first.open :] if work.task is not None]
        shared = end.stages if end else ()
        yield from half.stages(self._title(), fitted, shared, end.skip if end else frozenset())
        yield from end.remedies if end else ()

    def _title(self) -> str:
        if not self.parts or self.verb not in ("replace", "add"):
            return "Put back what was inside"
        return f"Fit {new(self.desk, self.parts)}"

    def _without_plugs_outside(self, closings: Sequence[Closing]) -> list[Closing]:
        """A plug to the outside goes back only where the guide does not say that it ends open."""
        ends = self.proof.guide.ends
        stays = {
            key
            for key in self.device.things
            if is_outside(self.bench, key)
            and not ends.get(self.device.things[key].id, State.IN) & State.IN
        }
        return [one for one in closings if not any(stays & set(work.keys) for work in one.works)]

    def _begun(self) -> tuple[Step, ...]:
        """The new unit taken in the hand, where the author has not done so; its packing taken off."""
        if not self.parts or self.verb not in ("replace", "add"):
            return ()
        verb = Verb.ADD if self.verb == "add" else Verb.EXCHANGE
        steps = prepare(self.desk, self.parts, (), (), verb).steps
        packed = {
            part.key
            for part in self.device.parts
            if part.packing and self.proof.end.perhaps(part.key, State.IN | State.ABSENT)
        }
        to_come = set(self.parts) - self.told.exchanged
        return tuple(step for step in steps if step.keys & (packed | to_come))

    def _emptied(self, gone: set[str]) -> list[Work]:
        """Settings that are lost by now, or will be when the new unit is in the hand."""
        tasks = {key for work in self.told.opened for key in work.keys}
        found = []
        for store in (one for one in self.device.stores if one.key not in gone):
            lost = {key for key, _ in self.layout.presence.of(store.emptied_by)}
            open_ = self.proof.end.perhaps(store.key, State.OUT) or lost & set(self.parts)
            if (
                open_
                and lost
                and not store.filled_by
                and store.key not in tasks
                and _is_kept(store)
            ):
                there = self.layout.presence.where[store.key]
                found.append(Work(Verb.RESTORE, (store.key,), there))
        return found


def _is_kept(store: Store) -> bool:
    return store.kind.value == "store"
