"""What an id stands for under a verb: single acts, with all that the record settles of them."""

from collections.abc import Hashable, Mapping
from dataclasses import dataclass

from guidebuild.device.acts import TABLE, Verb
from guidebuild.device.layout import Layout
from guidebuild.device.states import Kind
from guidebuild.device.things import Hole
from guidebuild.proof.bench import Bench
from guidebuild.proof.deeds import Deed, Deeds
from guidebuild.source.remembered import remembered

_CAPTIVE = {Verb.REMOVE: Verb.LOOSEN, Verb.REFIT: Verb.TIGHTEN}


@dataclass(frozen=True, slots=True)
class Meaning:
    """What an id stands for under a verb: single acts in order.

    `nowhere`: the configurations that have none of the things; `first` names one of them.
    """

    deeds: tuple[Deed, ...]
    nowhere: int
    first: tuple[Verb, str]


_NOTHING = Meaning((), 0, (Verb.REMOVE, ""))


class Meanings:
    """Each id under each verb is looked up once."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._deeds = Deeds(bench)
        self._known: dict[tuple[Hashable, str], Meaning] = {}

    def of(self, name: str, how: Hashable, verbs: Mapping[Kind, Verb]) -> Meaning:
        """What a name means; `how` stands for the verbs, one for each kind."""
        slot = (how, name)
        known = self._known.get(slot)
        if known is None:
            known = self._known[slot] = self._mean(name, verbs)
        return known

    def _mean(self, name: str, verbs: Mapping[Kind, Verb]) -> Meaning:
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


def meanings(bench: Bench) -> Meanings:
    """One object for all guides of a record that are numbered alike and replace the same parts.

    Nothing else in a guide decides what is to be asked of an act, and what follows it.
    """
    replaced = bench.goal if bench.guide.goal.verb == "replace" else ()
    shelf = _shelf(bench.layout)
    if replaced not in shelf:
        shelf[replaced] = Meanings(bench)
    return shelf[replaced]


@remembered
def _shelf(layout: Layout) -> dict[tuple[str, ...], Meanings]:
    """By the replaced parts."""
    return {}
