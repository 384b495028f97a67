"""What an author writes in one word, written out: groups, lists, `undo`, `do-up`, captive screws."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.acts import TABLE, Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.part import PartAct
from guidebuild.proof.bench import Bench
from guidebuild.source.said import Said
from guidebuild.source.span import Span

UNDO = {
    Kind.PART: Verb.REMOVE,
    Kind.FASTENER: Verb.REMOVE,
    Kind.CONNECTOR: Verb.DISCONNECT,
    Kind.JOINT: Verb.RELEASE,
    Kind.STORE: Verb.RELEASE,
    Kind.POWER: Verb.SWITCH_OFF,
}
DO_UP = {
    Kind.PART: Verb.REFIT,
    Kind.FASTENER: Verb.REFIT,
    Kind.CONNECTOR: Verb.RECONNECT,
    Kind.JOINT: Verb.CLOSE,
    Kind.STORE: Verb.RESTORE,
    Kind.POWER: Verb.SWITCH_ON,
}
_CAPTIVE = {Verb.REMOVE: Verb.LOOSEN, Verb.REFIT: Verb.TIGHTEN}


@dataclass(frozen=True, slots=True)
class Word:
    """One id as written: the single acts that it stands for, each with where its thing is there.

    `nowhere`: the configurations that have none of the things; `first` names one of them.
    """

    span: Span
    acts: tuple[tuple[Verb, str, int], ...]
    nowhere: int
    first: tuple[Verb, str]


class Shorthand:
    """Written out once an act."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._known: dict[int, tuple[Act, tuple[Word, ...]]] = {}

    def words(self, act: Act) -> tuple[Word, ...]:
        """An act's words in the order in which they are done."""
        known = self._known.get(id(act))
        if known is None:
            known = self._known[id(act)] = (act, tuple(self._write_out(act)))
        return known[1]

    def _write_out(self, act: Act) -> Iterator[Word]:
        if isinstance(act, PartAct):
            for said in act.undo:
                yield from self._word(said, UNDO)
        for said in act.targets:
            yield from self._word(said, {act.kind: act.verb})
        if isinstance(act, PartAct):
            for said in act.do_up:
                yield from self._word(said, DO_UP)

    def _word(self, said: Said, verbs: dict[Kind, Verb]) -> Iterator[Word]:
        """Unknown ids and things that do not know the act are skipped: the reader has told them."""
        things, where = self._bench.device.things, self._bench.layout.presence.where
        acts, there = [], 0
        for key in self._bench.device.names.get(said.text, ()):
            thing = things[key]
            verb = verbs.get(thing.kind)
            if verb is not None and (thing.kind, verb) in TABLE:
                if isinstance(thing, Hole) and thing.captive:
                    verb = _CAPTIVE.get(verb, verb)
                acts.append((verb, key, where[key]))
                there = (
                    where[key] if where[key] is self._bench.cells.everywhere else there | where[key]
                )
        if acts:
            nowhere = self._bench.configurations.same(self._bench.cells.everywhere ^ there)
            done = tuple(one for one in acts if one[2])
            yield Word(said.span, done, nowhere, acts[0][:2])
