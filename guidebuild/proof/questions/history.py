"""What was done to a thing before a certain moment, so that a message can say `taken off here`."""

from collections.abc import Iterable, Mapping

from guidebuild.device.acts import TABLE, Verb
from guidebuild.device.naming import called, done, subject
from guidebuild.device.states import ANY, HOLDING, State
from guidebuild.guide.blocks.check import Check
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof, Walked
from guidebuild.source.finding import Related
from guidebuild.source.remembered import remembered
from guidebuild.source.span import Span


@remembered
def walked(proof: Proof) -> tuple[Walked, ...]:
    """Everything that is done or checked, in document order."""
    return tuple([one for passage in proof.passages for one in passage.walked])


@remembered
def by_verb(proof: Proof) -> Mapping[Verb | None, tuple[Walked, ...]]:
    """The acts of each verb in document order, the checks under None; what the guide does not do is not there."""
    found: dict[Verb | None, list[Walked]] = {}
    for one in walked(proof):
        verb = one.doing.verb if isinstance(one.doing, Move) else None
        if verb in found:
            found[verb].append(one)
        else:
            found[verb] = [one]
    return {verb: tuple(acts) for verb, acts in found.items()}


def leads_to(proof: Proof, move: Move) -> State:
    """The state in which an act leaves its thing."""
    change = TABLE.get((proof.device.things[move.thing].kind, move.verb))
    return change.end if change else State(0)


def last_move(
    proof: Proof, key: str, states: State, before: Move | Check | None, where: int
) -> Move | None:
    """The last act before `before` that left `key` in one of `states`, in some configuration of `where`."""
    last = None
    for one in walked(proof):
        if one.doing is before:
            break
        match one.doing:
            case Move(thing=thing) as move if thing == key and one.where & where:
                last = move if leads_to(proof, move) & states else None
    return last


def place(move: Move) -> Span:
    """Where an act stands; of one that a step repeats, the word `same-as` that repeats it."""
    repeats = move.step.same_as
    inside = move.step.body
    if repeats is None or (
        move.span.source is inside.source and inside.start <= move.span.start < inside.end
    ):
        return move.span
    return repeats.span


def put_there(
    proof: Proof, keys: Iterable[str], before: Move | Check | None, where: int
) -> tuple[Related, ...]:
    """For each thing that stands in the way: the act that brought it there, where there was one."""
    return _places(proof, keys, HOLDING, before, where)


def taken_away(
    proof: Proof, keys: Iterable[str], before: Move | Check | None, where: int
) -> tuple[Related, ...]:
    """For each thing that is missing: the act that took it away, where there was one."""
    return _places(proof, keys, State.OUT, before, where)


def last_done(
    proof: Proof, keys: Iterable[str], before: Move | Check | None, where: int
) -> tuple[Related, ...]:
    """For each thing: the act that was done to it last, whatever it was."""
    return _places(proof, keys, ANY, before, where)


def _places(
    proof: Proof, keys: Iterable[str], states: State, before: Move | Check | None, where: int
) -> tuple[Related, ...]:
    found = [last_move(proof, key, states, before, where) for key in keys]
    return tuple(dict.fromkeys(told(proof, move) for move in found if move is not None))


def told(proof: Proof, move: Move) -> Related:
    """An act as a place that matters: `the cover is fitted here`."""
    thing = proof.device.things[move.thing]
    words = f"{called(proof.device, move.thing)} {subject(proof.device, [move.thing])['is']}"
    return Related(place(move), f"{words} {done(move.verb, thing)} here")
