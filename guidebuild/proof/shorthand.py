"""What an author writes in one word, written out: groups, lists, `undo`, `do-up`, captive screws."""

from collections.abc import Hashable
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.states import Kind
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.part import PartAct
from guidebuild.proof.bench import Bench
from guidebuild.proof.meanings import Meaning, meanings
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


@dataclass(slots=True)
class Written:
    """An act written out: where it is done, and each id as written with what it stands for."""

    act: Act
    where: int
    words: list[tuple[Span, Meaning]]


class Shorthand:
    """Each act is written out once."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._acts: dict[int, Written] = {}
        self._meanings = meanings(bench)

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
            meaning = self._meanings.of(said.text, how, verbs)
            if meaning.deeds or meaning.nowhere:
                words.append((said.span, meaning))
