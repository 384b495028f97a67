"""Laying `prove` and the oracle side by side."""

from collections.abc import Callable, Iterator

from guidebuild.device.record import Device
from guidebuild.guide.guide import Guide
from guidebuild.proof.mistake import Ending
from guidebuild.proof.proof import Proof, Snapshot
from guidebuild.proof.prove import prove
from tests.proof.fuzz.answers import numbered
from tests.proof.fuzz.case import Case
from tests.proof.fuzz.retold import complaint, numbers
from tests.proof.fuzz.told import all_told, fact_of, facts_in, states_of
from tests.proof.oracle.conditions import Answers
from tests.proof.oracle.facts import Detail, Fact, Outcome
from tests.proof.oracle.moment import Moment
from tests.proof.oracle.sets import Maybe, unpacked
from tests.proof.oracle.simulate import simulate

Simulate = Callable[[Guide, Device, Answers], Outcome]


def disagreements(case: Case, simulate: Simulate = simulate) -> Iterator[str]:
    """Each difference in words; none is what we want. `simulate` may know its answers by heart."""
    proof = prove(case.guide, case.device)
    outcomes: dict[int, Outcome] = {}
    every = numbered(case.guide, proof.configurations)
    for number, answers in every.items():
        # Merged answers must make no difference: take the first in one configuration, the last in another.
        chosen = answers[-(number % 2)]
        outcome = outcomes[number] = simulate(case.guide, case.device, chosen)
        where = f"configuration {number} {dict(chosen)}"
        for words in (*_facts(proof, number, outcome), *_states(proof, number, outcome)):
            yield f"{where}: {words}"
    yield from _found(proof, outcomes)
    yield from _words_for(proof, every)


def _words_for(proof: Proof, every: dict[int, list[Answers]]) -> Iterator[str]:
    """Where it holds, told in words, among where its step is shown."""
    configurations = proof.configurations
    shown = {passage.step.id: passage.shown for passage in proof.passages}
    for one in all_told(proof):
        among = configurations.everywhere if isinstance(one, Ending) else shown[one.step.id]
        told = configurations.tell(one.where, among)
        where = numbers(one.where, configurations)
        wrong = complaint(told, where, numbers(among, configurations), every)
        if wrong is not None:
            yield f"{fact_of(one)}: {wrong}"


def _facts(proof: Proof, number: int, outcome: Outcome) -> Iterator[str]:
    told, expected = facts_in(proof, number), outcome.facts
    for fact in told.keys() - expected.keys():
        yield f"only prove says {fact}"
    for fact in expected.keys() - told.keys():
        yield f"only the oracle says {fact} {expected[fact]}"
    for fact in told.keys() & expected.keys():
        if told[fact].blames != expected[fact].blames:
            yield f"{fact}: prove blames {told[fact].blames}, the oracle {expected[fact].blames}"
    entries = {
        (entry.check.span.start, entry.step.id, entry.remedy.id)
        for entry in proof.entries
        if entry.where >> number & 1
    }
    if entries != outcome.entries:
        yield f"entries: prove {entries}, the oracle {outcome.entries}"


def _states(proof: Proof, number: int, outcome: Outcome) -> Iterator[str]:
    yield from _same(proof.start, number, outcome.start, "at the start")
    yield from _same(proof.end, number, outcome.end, "at the end")
    for passage in proof.passages:
        passed = outcome.steps.get(passage.step.id)
        shown = bool(passage.shown >> number & 1)
        if shown != (passed is not None):
            yield f"{passage.step.id}: shown {shown} by prove, not so by the oracle"
        elif passed is not None:
            yield from _same(passage.before, number, passed.before, f"before {passage.step.id}")
            yield from _same(passage.after, number, passed.after, f"after {passage.step.id}")


def _same(snapshot: Snapshot, number: int, moment: Moment, when: str) -> Iterator[str]:
    for key, expected in moment.now.items():
        found = states_in(snapshot, key, number)
        if found != expected:
            yield f"{when} {key} is {_words(found)}, by the oracle {_words(expected)}"


def states_in(snapshot: Snapshot, key: str, number: int) -> Maybe:
    """What may be true of a thing in one configuration."""
    cells = [states for states, bits in snapshot.cells(key) if bits >> number & 1]
    assert len(cells) <= 1, f"{key} has {cells} in one configuration"
    return unpacked(cells[0]) if cells else frozenset()


def _words(states: Maybe) -> str:
    return " or ".join(sorted(state.name or "" for state in states)) or "nothing"


def _found(proof: Proof, outcomes: dict[int, Outcome]) -> Iterator[str]:
    """A finding's states are those of all its configurations together."""
    told: dict[Fact, Detail] = {}
    expected: dict[Fact, Detail] = {}
    for one in all_told(proof):
        fact = fact_of(one)
        told[fact] = told.get(fact, Detail()).joined(states_of(one))
    for outcome in outcomes.values():
        for fact, detail in outcome.facts.items():
            expected[fact] = expected.get(fact, Detail()).joined(detail)
    for fact in told.keys() & expected.keys():
        mine, theirs = expected[fact], told[fact]
        if fact.what == "left-over":  # told while it happens, not by its state at the end
            continue
        if (theirs.found, theirs.other) != (mine.found, mine.other):
            yield (
                f"{fact}: prove found {_words(theirs.found)}; {_words(theirs.other)},"
                f" the oracle {_words(mine.found)}; {_words(mine.other)}"
            )
