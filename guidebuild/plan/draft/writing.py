"""A group of acts as a step: its heading, its cautions, its blocks, and a place for its picture."""

from collections.abc import Iterator, Sequence
from itertools import groupby

from guidebuild.device.acts import Verb
from guidebuild.device.record import POWER, Hazard
from guidebuild.device.states import Kind
from guidebuild.device.things import Part
from guidebuild.guide.signal_words import gravity
from guidebuild.plan.draft.conditions import condition
from guidebuild.plan.draft.desk import Desk
from guidebuild.plan.draft.script import Block, Comment, Entry, Item, Step, Text, Value
from guidebuild.plan.draft.sealing import wants_sequence
from guidebuild.plan.draft.titles import heading
from guidebuild.plan.draft.work import Work, ids

_SLUG_OF_KIND = {
    Kind.PART: "part",
    Kind.FASTENER: "fastener",
    Kind.CONNECTOR: "connector",
    Kind.JOINT: "joint",
    Kind.STORE: "store",
    Kind.POWER: "power",
}


class Writer:
    """Writes one stage: a hazard is told where it is met first in it."""

    def __init__(self, desk: Desk) -> None:
        self.desk = desk
        self.told: set[str] = set()

    def step(
        self, group: Sequence[Work], title: str = "", more: Sequence[Item] = (), name: str = ""
    ) -> Step:
        """The step in which these acts are done, with what else stands in it."""
        desk = self.desk
        where = 0
        for work in group:
            where |= work.where
        title = desk.titled(title or heading(desk.device, list(group), desk.about))
        keys = frozenset(key for work in group for key in work.keys)
        items: list[Item] = [Comment(self._picture(title, group))]
        items += self.cautions(keys)
        items += desk.lengths.before(group)
        items += self._blocks(group, where)
        items += [Text(words) for words in desk.lengths.after(group)]
        when = condition(desk.cases, where)
        return Step(title, (*items, *more), when, name, keys)

    def cautions(self, keys: frozenset[str]) -> Iterator[Block]:
        """The record's hazards of handling these, the gravest first, each once a stage."""
        for hazard in sorted(self.desk.device.hazards.values(), key=lambda one: gravity(one.level)):
            if hazard.id not in self.told and keys & _handled(self.desk, hazard):
                self.told.add(hazard.id)
                yield Block("caution", ({"for": hazard.id},))

    def _picture(self, title: str, group: Sequence[Work]) -> str:
        keys = [key for work in group for key in work.keys if key != POWER]
        seen = ", ".join(ids(self.desk.device, keys)) or "what is looked at"
        view = next((v for key in keys if (v := self.desk.view_of(key))), "")
        return f"picture: {self.desk.slug(title)}.jpg: {seen}{view}"

    def _blocks(self, group: Sequence[Work], where: int) -> Iterator[Block]:
        """Acts on things of one kind in one block; a part with what is undone or done up in its own keys."""
        device = self.desk.device
        part = next((one for one in group if isinstance(device.things[one.keys[0]], Part)), None)
        if part is not None:
            yield Block("part", (self._part(group, part),))
            return
        rows: list[tuple[str, bool, Entry]] = []
        for work in group:
            back = work.verb is Verb.RECONNECT
            rows.append((_SLUG_OF_KIND[work.kind(device)], back, self._entry(work, where)))
        for (name, _), some in groupby(rows, key=lambda row: row[:2]):
            yield Block(name, tuple(entry for _, _, entry in some))

    def _entry(self, work: Work, where: int) -> Entry:
        device = self.desk.device
        named = ids(device, work.keys)
        found: dict[str, Value] = {work.verb.value: named[0] if len(named) == 1 else named}
        if work.where != where:
            found["when"] = condition(self.desk.cases, work.where, where)
        if work.verb is Verb.REFIT and wants_sequence(device, work.keys):
            found["sequence"] = "cross"
        return found

    def _part(self, group: Sequence[Work], part: Work) -> Entry:
        device = self.desk.device
        at = list(group).index(part)
        found: dict[str, Value] = {part.verb.value: ids(device, part.keys)[0]}
        undo = ids(device, [key for work in group[:at] for key in work.keys])
        do_up = ids(device, [key for work in group[at + 1 :] for key in work.keys])
        if undo:
            found["undo"] = undo if len(undo) > 1 else undo[0]
        if do_up:
            found["do-up"] = do_up if len(do_up) > 1 else do_up[0]
        thing = device.part(part.keys[0])
        if part.verb is Verb.LIFT and thing.opens_to is not None:
            found["angle"] = f"{thing.opens_to}°"
        if part.verb in (Verb.LIFT, Verb.OFFER) and self.desk.hangs(part.keys[0]):
            found["support"] = "your hand, or a block"
        return found


def _handled(desk: Desk, hazard: Hazard) -> frozenset[str]:
    names = desk.device.names
    return frozenset(key for said in hazard.when_handling for key in names.get(said.text, ()))
