"""The steps in which functions are tried, and the remedies for when one is not right."""

from collections.abc import Sequence
from dataclasses import replace

from guidebuild.device.acts import Verb
from guidebuild.device.naming import lowered
from guidebuild.device.record import POWER
from guidebuild.device.things import Connector, Link, Part
from guidebuild.plan.bench import Bench
from guidebuild.plan.draft import sentences
from guidebuild.plan.draft.conditions import condition
from guidebuild.plan.draft.desk import Desk
from guidebuild.plan.draft.names import names
from guidebuild.plan.draft.script import Block, Item, Stage, Step, Text, Value
from guidebuild.plan.draft.trials import Trial, is_outside
from guidebuild.plan.draft.work import Work
from guidebuild.plan.draft.writing import Writer
from guidebuild.plan.graph import numbers

LOOK = "Look into each plug: no pin is bent, and no dust lies in it."
LOOK_ONE = "Look into the plug: no pin is bent, and no dust lies in it."


class Tester:
    """`sources`: the plugs that were opened to make the device dead. Remedies gather while steps are written."""

    def __init__(self, desk: Desk, bench: Bench, sources: Sequence[str]) -> None:
        self.desk = desk
        self.bench = bench
        self.sources = list(sources)
        self.remedies: list[Stage] = []

    def live(
        self, writer: Writer, tried: Sequence[Trial], source: Work, shut: set[int]
    ) -> list[Step]:
        """Switched on, while it lies open: mate the source, try, make it dead again."""
        desk, everywhere = self.desk, self.desk.cases.everywhere
        on, off = (
            Work(Verb.SWITCH_ON, (POWER,), everywhere),
            Work(Verb.SWITCH_OFF, (POWER,), everywhere),
        )
        mated, open_ = (
            Work(verb, source.keys, source.where) for verb in (Verb.RECONNECT, Verb.DISCONNECT)
        )
        before = [off, open_]
        named = {
            one.function: title
            for one in tried
            if (
                title := self._remedy(
                    one, "test-open", self._to_reseat(one, shut), before, [mated], True
                )
            )
        }
        checks = self._checks(tried, True, named)
        return [
            writer.step([mated], f"Connect the {desk.noun} for the test"),
            writer.step([on], "Switch on and try each function", [*checks], "test-open"),
            writer.step([off, open_], f"Make the {desk.noun} dead again"),
        ]

    def pulled_at(self, writer: Writer, tried: Sequence[Trial], shut: set[int]) -> list[Step]:
        """Dead and open: each plug is pulled at."""
        named = {
            one.function: title
            for one in tried
            if (title := self._remedy(one, "test-open", self._to_reseat(one, shut), [], [], False))
        }
        return [
            writer.step([], "Pull at each plug", self._checks(tried, False, named), "test-open")
        ]

    def fed(
        self, writer: Writer, tried: Sequence[Trial], source: str, shut: set[int]
    ) -> list[Step]:
        """What a source carries, when it is mated for good and can still be reached."""
        desk = self.desk
        name = f"test-{desk.device.things[source].id}"
        lent = self.lent(tried)
        reconnect = [Work(Verb.RECONNECT, (key,), self._there(key)) for key in lent]
        disconnect = [Work(Verb.DISCONNECT, (key,), self._there(key)) for key in lent]
        powered = not lent
        lead = names(desk.device, lent)
        everywhere = desk.cases.everywhere
        on = [Work(Verb.SWITCH_ON, (POWER,), everywhere)] if powered else []
        off = [Work(Verb.SWITCH_OFF, (POWER,), everywhere)] if powered else []
        named = {
            one.function: title
            for one in tried
            if (title := self._remedy(one, name, [source], [*off, *disconnect], [], True))
        }
        checks = self._checks(tried, True, named)
        words = "Try " + ", ".join(
            desk.device.functions[one.function].text.lower() for one in tried
        )
        first = writer.step([*on, *reconnect], words, [*checks], name)
        last = writer.step(
            [*off, *disconnect], "Switch off" if powered else f"Take {lead} out again"
        )
        return [first, last]

    def closed(
        self, writer: Writer, tried: Sequence[Trial], mains: Sequence[str], more: Sequence[Step],
        powered: bool,
    ) -> list[Step]:  # fmt: skip
        """The closed device, tried as its user will; where nothing feeds it, looked at."""
        desk, everywhere = self.desk, self.desk.cases.everywhere
        if not powered:
            text = f"The {desk.noun} is closed, and nothing is left on the tray."
            stop = sentences.stop(desk.noun, False, False)
            check = Block("check", ({"expect": text, "stop": stop, **self._tests(tried)},))
            return [*more, writer.step([], f"Look at the {desk.noun}", [check], "test-closed")]
        reconnect = [Work(Verb.RECONNECT, (key,), self._there(key)) for key in mains]
        disconnect = [Work(Verb.DISCONNECT, (key,), self._there(key)) for key in mains]
        checks = self._checks(tried, True, {}) or [self._as_before()]
        on = Work(Verb.SWITCH_ON, (POWER,), everywhere)
        off = Work(Verb.SWITCH_OFF, (POWER,), everywhere)
        title = f"Switch the closed {desk.noun} on"
        first = writer.step([*reconnect, on], title, [*checks], "test-closed")
        last = writer.step([off, *disconnect], f"Switch the {desk.noun} off")
        return [first, *more, last]

    def _tests(self, tried: Sequence[Trial]) -> dict[str, Value]:
        functions = tuple(one.function for one in tried)
        return {"tests": functions} if functions else {}

    def _as_before(self) -> Block:
        text = f"The {self.desk.noun} works as before, and nothing is left on the tray."
        stop = self._stop()
        return Block("check", ({"expect": text, "powered": True, "stop": stop},))

    def _stop(self) -> str:
        plugged = any(is_outside(self.bench, key) for key in self.sources)
        return sentences.stop(self.desk.noun, bool(self.sources), plugged)

    def _there(self, key: str) -> int:
        return self.bench.layout.presence.where[key]

    def lent(self, tried: Sequence[Trial]) -> list[str]:
        """Plugs from outside that carry one of these functions, too: in for the test only."""
        functions = {one.function for one in tried}
        return [
            plug.key
            for plug in self.desk.device.connectors
            if functions & {said.text for said in plug.carries} and is_outside(self.bench, plug.key)
        ]

    def _checks(self, tried: Sequence[Trial], live: bool, remedies: dict[str, str]) -> list[Item]:
        desk, entries = self.desk, []
        for one in tried:
            expect = (
                sentences.works(desk.device, one.function)
                if live
                else sentences.sits(desk.device, one.function, one.links)
            )
            entry: dict[str, Value] = {"expect": expect, "tests": one.function}
            if live and not self.lent([one]) and not sentences.protects(desk.device, one.function):
                entry["powered"] = True
            if one.function in remedies:
                entry["if-not"] = desk.slug(remedies[one.function])
            else:
                entry["stop"] = self._stop()
            when = condition(desk.cases, one.where)
            if when:
                entry["when"] = when
            entries.append(entry)
        return [Block("check", tuple(entries))] if entries else []

    def _is_plug(self, key: str) -> bool:
        return isinstance(self.desk.device.things[key], Connector)

    def _to_reseat(self, trial: Trial, shut: set[int]) -> list[str]:
        """The links of a function in an order in which they can be opened again, with what guards them."""
        order: dict[str, None] = {}
        for key in reversed(trial.links):
            self._with_guards(key, shut, order, set())
        return list(order)

    def _with_guards(
        self, key: str, shut: set[int], order: dict[str, None], asked: set[str]
    ) -> bool:
        """Whether a link can be opened at this point; what must be opened before it stands before it."""
        task = self.bench.opens(key)
        thing = self.desk.device.things[key]
        if task is None or key in asked or not isinstance(thing, Link) or isinstance(thing, Part):
            return False
        asked.add(key)
        for need in self.bench.needs[task]:
            if need.why not in ("hidden", "guarded") or not self._all_shut(need.tasks, shut):
                continue
            first = self.bench.openings[next(numbers(need.tasks))].keys[0]
            plug = self._is_plug(first) and self._with_guards(first, shut, order, asked)
            if not plug and first not in order:
                return False
        order[key] = None
        return True

    def _all_shut(self, tasks: int, shut: set[int]) -> bool:
        return all(task in shut for task in numbers(tasks))

    def _remedy(
        self, trial: Trial, resume: str, links: Sequence[str],
        before: Sequence[Work], after: Sequence[Work], live: bool,
    ) -> str:  # fmt: skip
        """Open each plug, look, and push it home again. The heading; empty where no plug can be reached."""
        desk, writer = self.desk, Writer(self.desk)
        title = sentences.fails(desk.device, trial.function)
        plugs = [key for key in links if self._is_plug(key)]
        entry: dict[str, Value] = {
            "id": desk.slug(title),
            "remedy": {"for": (trial.function,), "resume": resume, "tries": 2},
            "then": sentences.give_up(desk.device, desk.noun, self.sources, live),
        }
        if not plugs:
            return ""
        open_ = [Work(Verb.DISCONNECT, (key,), self._there(key)) for key in plugs]
        shut = [Work(Verb.RECONNECT, (key,), self._there(key)) for key in reversed(plugs)]
        again = writer.step(
            [*before, *open_, *shut, *after], f"Seat {_few(desk, trial, plugs)} again"
        )
        at = next(n for n, item in enumerate(again.items) if _closes(item))
        look = Text(LOOK if len(plugs) > 1 else LOOK_ONE)
        items = (*again.items[:at], look, *again.items[at:])
        self.remedies.append(Stage(title, (replace(again, items=items),), "", entry))
        return title


def _few(desk: Desk, trial: Trial, plugs: Sequence[str]) -> str:
    """A few plugs by their names, many by what they carry."""
    if len(plugs) <= sentences.MANY:
        return names(desk.device, plugs)
    return f"the plugs for {lowered(desk.device.functions[trial.function].text)}"


def _closes(item: Item) -> bool:
    return isinstance(item, Block) and any(Verb.RECONNECT.value in one for one in item.entries)
