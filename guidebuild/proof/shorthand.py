"""What an author writes in one word, written out: groups, lists, `undo`, `do-up`, captive screws."""

from collections.abc import Hashable
from dataclasses import dataclass

from guidebuild.device.acts import TABLE, Verb
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.part import PartAct
from guidebuild.proof.bench import Bench
from guidebuild.proof.deeds import Deed, Deeds
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
class Meaning:
    """What an id stands for under a verb: single acts in order.

    `nowhere`: the configurations that have none of the things; `first` names one of them.
    """

    deeds: tuple[Deed, ...]
    nowhere: int
    first: tuple[Verb, str]


@dataclass(slots=True)
class Written:
    """An act written out: where it is done, and each id as written with what it stands for."""

    act: Act
    where: int
    words: list[tuple[Span, Meaning]]


class Shorthand:
    """Each act is written out once, and each id under each verb."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._deeds = Deeds(bench)
        self._acts: dict[int, Written] = {}
        self._meanings: dict[tuple[Hashable, str], Meaning] = {}

    def written(self, act: Act) -> Written:
        """An act's words in the order in which they are done."""
        known = self._acts.get(id(act))
        if known is None:
            where = self._bench.configurations.bits(act.when)
            words: list[tuple[Span, Meaning]] = []
            if isinstance(act, PartAct):
                self._write(words, act.undo, "undo", UNDO)
            self._write(words, act.targets, (act.kind, act.verb), {act.kind: act.verb})
            if isinstance(act, PartAct):
                self._write(words, act.do_up, "do-up", DO_UP)
            known = self._acts[id(act)] = Written(act, where, words)
        return known

    def _write(
        self,
        words: list[tuple[Span, Meaning]],
        ids: tuple[Said, ...],
        how: Hashable,
        verbs: dict[Kind, Verb],
    ) -> None:
        for said in ids:
            slot = (how, said.text)
            known = self._meanings.get(slot)
            if known is None:
                known = self._meanings[slot] = self._mean(said.text, verbs)
            if known.deeds or known.nowhere:
                words.append((said.span, known))

    def _mean(self, name: str, verbs: dict[Kind, Verb]) -> Meaning:
        """Unknown ids and things that do not know the act are skipped: the reader has told them."""
        everywhere, there = self._bench.cells.everywhere, 0
        deeds = []
        for key in self._bench.device.names.get(name, ()):
            thing = self._bench.device.things[key]
            verb = verbs.get(thing.kind)
            if verb is not None and (thing.kind, verb) in TABLE:
                if isinstance(thing, Hole) and thing.captive:
                    verb = _CAPTIVE.get(verb, verb)
                deed = self._deeds.of(verb, thing)
                deeds.append(deed)
                there = everywhere if deed.there is everywhere else there | deed.there
        if not deeds:
            return _NOTHING
        nowhere = 0 if there is everywhere else everywhere ^ there
        done = tuple([deed for deed in deeds if deed.there])
        return Meaning(done, nowhere, (deeds[0].verb, deeds[0].key))


_NOTHING = Meaning((), 0, (Verb.REMOVE, ""))
