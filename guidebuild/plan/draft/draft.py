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
from guidebuild.plan.draft.halves import FirstHalf, SecondHalf
from guidebuild.plan.draft.lengths import Lengths
from guidebuild.plan.draft.names import name, title
from guidebuild.plan.draft.new_unit import look_at, prepare
from guidebuild.plan.draft.script import Entry, Script, Stage
from guidebuild.plan.draft.shared import Known, beginning, ending, known
from guidebuild.plan.draft.trials import Trials, is_outside, trials
from guidebuild.plan.draft.work import Work
from guidebuild.read.guide.supply import uses, with_packing

STAYS = ("inspect", "clean", "adjust")


@dataclass(frozen=True, slots=True)
class Wish:
    """What the guide is to do: `replace`, `remove`, `inspect`, `clean` or `adjust` a part; with which kits."""

    goal: str
    part: str
    kits: tuple[Kit, ...] = ()
    form: str = ""  # only this form of the kit; empty for all


@dataclass(frozen=True, slots=True)
class Drafted:
    """`cost` and `bound` are those of taking apart: parts that come off and changes of tool."""

    script: Script
    cost: int
    bound: int
    configurations: int


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
        self.stays = wish.goal in STAYS
        self.called = name(device, wish.part)
        self.desk = Desk(layout, cases, wish.part)

    def written(self) -> Drafted | None:
        moved = riders(self.bench, self.wish.part, self.used, self.cases)
        if self.wish.goal != "replace":
            moved = {}
        way = ahead(self.bench, [self.wish.part], self.stays, moved)
        if way is None:
            return None
        self.desk.lengths = Lengths(self.device, [key for work in way.works for key in work.keys])
        script = Script(self._front(way), self._intro(), tuple(self._stages(way)))
        return Drafted(script, way.cost, way.bound, self.cases.total)

    def _front(self, way: Ahead) -> Entry:
        handled = {key for work in way.works for key in work.keys} | {self.wish.part}
        outer = {key for key in handled if is_outside(self.bench, key)}
        option = next((use.option for use in self.used if use.option), "")
        return front(
            self.device,
            title(f"{self.wish.goal} the {self.called}"),
            {self.wish.goal: self.device.things[self.wish.part].id},
            sorted(handled),
            kits=[use.kit.id for use in self.used],
            ends={
                **{key: "open" for key in self.device.things if key in outer},
                **self._lost(way),
            },
            exclude=f"{option} != {self.wish.form}" if self.wish.form else "",
            parts=[self.wish.part] if self.wish.goal in ("replace", "remove") else [],
        )

    def _lost(self, way: Ahead) -> dict[str, str]:
        """What a part that stays off leaves behind: itself worn, and stores that can't be filled without it."""
        if self.wish.goal != "remove":
            return {}
        part = self.device.part(self.wish.part)
        found = {part.key: "worn"} if part.single_use else {}
        gone = Back(self.bench, way.needs, way.out, (), part.key).gone
        done = {key for work in way.out for key in work.keys} | {part.key}
        for store in self.device.stores:
            emptied = {key for key, _ in self.layout.presence.of(store.emptied_by)}
            if store.key in gone and not store.filled_by and ({store.key} | emptied) & done:
                found[store.key] = "empty"
        return found

    def _intro(self) -> str:
        noun, called = self.desk.noun, self.called
        match self.wish.goal:
            case "replace":
                does = f"takes the {called} out of the {noun} and fits a new one"
            case "remove":
                does = f"takes the {called} out of the {noun}"
            case goal:
                does = f"opens the {noun} to {goal} the {called}"
        return f"For the {self.device.name.text}. This guide {does}."

    def _stages(self, way: Ahead) -> Iterator[Stage]:
        every = known(self.guides, self.device)
        begun = beginning(every, way.out, self.cases)
        out = begun[1] if begun else list(way.out)
        first = FirstHalf(self.desk, self.bench, out, [self.wish.part])
        verb = {"replace": "Take out", "remove": "Take out"}.get(self.wish.goal, "Get at")
        yield from first.stages(f"{verb} the {self.called}", begun[0] if begun else None)
        if self.stays:
            yield look_at(self.desk, self.wish.part, self.wish.goal)
        yield from self._second(way, out[first.open :], every)

    def _second(
        self, way: Ahead, fitted: Sequence[Work], every: Sequence[Known]
    ) -> Iterator[Stage]:
        gone = self.wish.part if self.wish.goal == "remove" else None
        opened = [*way.out, *way.moved]
        renewed = [self.wish.part] if self.wish.goal == "replace" else []
        back = Back(self.bench, way.needs, opened, renewed, gone)
        closings = [
            one
            for one in back.closings()
            if not any(is_outside(self.bench, key) for work in one.works for key in work.keys)
        ]
        closings, settings = with_settings(self.bench, closings, self._emptied(opened, back.gone))
        found = trials(self.bench, way.needs, opened, closings)
        mine = self._moved_back(way, found)
        prepared: Stage | None = None
        if self.wish.goal == "replace":
            prepared = prepare(
                self.desk, self.wish.part, way.moved, [one for one in closings if one.task in mine]
            )
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
        fit = {"replace": f"Fit the new {self.called}"}.get(
            self.wish.goal, "Put back what was inside"
        )
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
        keys = {key for work in opened for key in work.keys} | {self.wish.part}
        if self.stays or self.wish.goal == "remove":
            keys -= {self.wish.part}
        tasks = {key for work in opened for key in work.keys}
        found = []
        for store in (one for one in self.device.stores if one.key not in gone):
            lost = {key for key, _ in self.layout.presence.of(store.emptied_by)} & keys
            if lost and not store.filled_by and store.key not in tasks and isinstance(store, Store):
                found.append(
                    Work(Verb.RESTORE, (store.key,), self.layout.presence.where[store.key])
                )
        return found
