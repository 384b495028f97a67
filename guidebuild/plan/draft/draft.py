"""A whole guide from the record: take the part out, change it, put everything back, try it."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from guidebuild.device.acts import Verb
from guidebuild.device.kit import Kit
from guidebuild.device.layout import Layout
from guidebuild.device.record import Device
from guidebuild.device.things import Store
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.guide import Guide, KitUse
from guidebuild.plan.bench import Bench
from guidebuild.plan.draft.ahead import Ahead, ahead, riders
from guidebuild.plan.draft.cases import cases_of
from guidebuild.plan.draft.closing import Back, with_settings
from guidebuild.plan.draft.desk import Desk
from guidebuild.plan.draft.front import front
from guidebuild.plan.draft.goals import BRINGS, STAYS, intro, way_in
from guidebuild.plan.draft.halves import FirstHalf, SecondHalf
from guidebuild.plan.draft.lengths import Lengths
from guidebuild.plan.draft.names import names, title
from guidebuild.plan.draft.new_unit import look_at, new, prepare
from guidebuild.plan.draft.script import Entry, Script, Stage
from guidebuild.plan.draft.shared import Known, beginning, ending, known
from guidebuild.plan.draft.trials import Trials, is_outside, trials
from guidebuild.plan.draft.work import Work
from guidebuild.read.guide.supply import uses, with_packing

FEW = 3  # parts: more would make a long sentence


@dataclass(frozen=True, slots=True)
class Wish:
    """What the guide is to do with which parts (`goals.py`), with which kits."""

    goal: str
    parts: tuple[str, ...]
    kits: tuple[Kit, ...] = ()
    form: str = ""  # only this form of the kit; empty for all


@dataclass(frozen=True, slots=True)
class Drafted:
    """`cost` and `bound` are those of taking apart: parts that come off and changes of tool.

    `along`: the ids of what comes along: from the old unit over to the new one, or added with it.
    """

    script: Script
    cost: int
    bound: int
    configurations: int
    along: tuple[str, ...] = ()


def draft(device: Device, guides: Sequence[Guide], wish: Wish) -> Drafted | None:
    """None where the record leaves no way to the part. `guides`: those of the device, for their shared stages."""
    used = uses([(kit, kit.span) for kit in wish.kits])
    device = with_packing(device, used)
    cases = cases_of(device, used, wish.form)
    layout = Layout(device, cases.bits, cases.everywhere)
    return _Draft(device, layout, cases, used, guides, wish).written()


class _Draft:
    """All that is known while one draft is written."""

    def __init__(
        self, device: Device, layout: Layout, cases: Configurations,
        used: Sequence[KitUse], guides: Sequence[Guide], wish: Wish,
    ) -> None:  # fmt: skip
        self.device, self.layout, self.cases = device, layout, cases
        self.used, self.guides, self.wish = used, guides, wish
        self.bench = Bench(layout)
        self.parts = [*wish.parts, *(self._come_along() if wish.goal == "add" else ())]
        self.stays = wish.goal in STAYS
        self.them = names(device, self.parts)
        self.desk = Desk(layout, cases, wish.parts[0])

    def _come_along(self) -> list[str]:
        """What sits on parts that are added is added with them."""
        carried = [key for part in self.wish.parts for key in self.layout.hosts.carried(part)]
        new = (key for key in dict.fromkeys(carried) if key not in self.wish.parts)
        return [key for key in new if not self.device.part(key).packing]

    def written(self) -> Drafted | None:
        moved: dict[str, int] = {}
        if self.wish.goal == "replace":
            moved = riders(self.bench, self.parts, self.used, self.cases)
        way = ahead(self.bench, self.parts, self.stays, moved)
        if way is None:
            return None
        self.desk.lengths = Lengths(self.device, [key for work in way.works for key in work.keys])
        script = Script(self._front(way), self._intro(), tuple(self._stages(way)))
        more = [key for key in self.parts if key not in self.wish.parts]
        along = tuple(self.device.things[key].id for key in (*more, *moved))
        return Drafted(script, way.cost, way.bound, self.cases.total, along)

    def _front(self, way: Ahead) -> Entry:
        handled = {key for work in way.works for key in work.keys} | set(self.parts)
        outer = {key for key in handled if is_outside(self.bench, key)}
        goal = tuple(self.device.things[key].id for key in self.parts)
        option = next((use.option for use in self.used if use.option), "")
        return front(
            self.device,
            title(f"{self.wish.goal} {self.them}"),
            {self.wish.goal: goal if len(goal) > 1 else goal[0]},
            sorted(handled),
            kits=[use.kit.id for use in self.used],
            ends={
                **{key: "open" for key in self.device.things if key in outer},
                **self._lost(way),
            },
            exclude=f"{option} != {self.wish.form}" if self.wish.form else "",
            parts=self.parts if self.wish.goal in ("replace", "remove") else [],
        )

    def _lost(self, way: Ahead) -> dict[str, str]:
        """What a part that stays off leaves behind: itself worn, and stores that can't be filled without it."""
        if self.wish.goal != "remove":
            return {}
        found = {key: "worn" for key in self.parts if self.device.part(key).single_use}
        gone = Back(self.bench, way.needs, way.out, (), self.parts).gone
        done = {key for work in way.out for key in work.keys} | set(self.parts)
        for store in self.device.stores:
            emptied = {key for key, _ in self.layout.presence.of(store.emptied_by)}
            if store.key in gone and not store.filled_by and ({store.key} | emptied) & done:
                found[store.key] = "empty"
        return found

    def _intro(self) -> str:
        them = self.them if len(self.parts) <= FEW else "the parts that its title names"
        return intro(self.wish.goal, self.device.name.text, self.desk.noun, them)

    def _stages(self, way: Ahead) -> Iterator[Stage]:
        every = known(self.guides, self.device)
        mine = self._not_there_yet(way)
        shown = [work for work in way.out if work not in mine]
        begun = beginning(every, shown, self.cases)
        out = begun[1] if begun else shown
        first = FirstHalf(self.desk, self.bench, out, self.parts)
        yield from first.stages(way_in(self.wish.goal, self.them), begun[0] if begun else None)
        if self.stays:
            yield look_at(self.desk, self.parts, self.wish.goal)
        yield from self._second(way, [*out[first.open :], *mine], every)

    def _not_there_yet(self, way: Ahead) -> list[Work]:
        """Of a part that is added nothing has to be opened: it and what ties it come new."""
        if self.wish.goal != "add":
            return []
        keys = {link.key for part in self.parts for link in self.layout.touching(part)}
        return [work for work in way.out if set(work.keys) <= {*self.parts, *keys}]

    def _second(
        self, way: Ahead, fitted: Sequence[Work], every: Sequence[Known]
    ) -> Iterator[Stage]:
        gone = self.parts if self.wish.goal == "remove" else ()
        opened = [*way.out, *way.moved]
        brings = self.wish.goal in BRINGS
        renewed = self.parts if brings else []
        back = Back(self.bench, way.needs, opened, renewed, gone)
        closings = [
            one
            for one in back.closings()
            if not any(is_outside(self.bench, key) for work in one.works for key in work.keys)
        ]
        absent = self._not_there_yet(way)
        emptying = [work for work in opened if work not in absent]
        closings, settings = with_settings(self.bench, closings, self._emptied(emptying, back.gone))
        found = trials(self.bench, way.needs, opened, closings)
        mine = self._moved_back(way, found)
        prepared: Stage | None = None
        if brings:
            moved = [one for one in closings if one.task in mine]
            verb = Verb.ADD if self.wish.goal == "add" else Verb.EXCHANGE
            prepared = prepare(self.desk, self.parts, way.moved, moved, verb)
            if len(prepared.steps) > 1:
                yield prepared
        closings = [one for one in closings if one.task not in mine]
        end = ending(every, closings)
        if end is not None:
            fed = tuple(one for one in found.fed if one.function not in end.tests)
            found = replace(found, fed=fed)
        half = SecondHalf(
            self.desk, self.bench, closings, found, opened, settings, frozenset(back.gone)
        )
        if prepared is not None and len(prepared.steps) == 1:
            half.begin = prepared.steps
        fit = f"Fit {new(self.desk, self.parts)}" if brings else "Put back what was inside"
        tasks = [work.task for work in fitted if work.task is not None]
        shared = end.stages if end else ()
        yield from half.stages(fit, tasks, shared, end.skip if end else frozenset())
        yield from end.remedies if end else ()

    def _moved_back(self, way: Ahead, found: Trials) -> set[int | None]:
        """What goes back on the bench; nothing, where plugs that are to be tried are among it: they go back in turn."""
        tried = {key for one in (*found.open_, *found.fed) for key in one.links}
        if any(tried & set(work.keys) for work in way.moved):
            return set()
        return {work.task for work in way.moved}

    def _emptied(self, opened: Sequence[Work], gone: set[str]) -> list[Work]:
        """Settings that are lost by what was done, and stores that nothing fills by itself."""
        keys = {key for work in opened for key in work.keys} | set(self.parts)
        if self.wish.goal != "replace":
            keys -= set(self.parts)
        tasks = {key for work in opened for key in work.keys}
        found = []
        for store in (one for one in self.device.stores if one.key not in gone):
            lost = {key for key, _ in self.layout.presence.of(store.emptied_by)} & keys
            if lost and not store.filled_by and store.key not in tasks and isinstance(store, Store):
                found.append(
                    Work(Verb.RESTORE, (store.key,), self.layout.presence.where[store.key])
                )
        return found
