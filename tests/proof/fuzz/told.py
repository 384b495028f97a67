"""What `prove` says, taken apart by configuration, in the form in which the oracle speaks."""

from guidebuild.guide.stage import Stage
from guidebuild.proof.mistake import Ending, Parting, Unmet
from guidebuild.proof.proof import Proof
from tests.proof.oracle.facts import Detail, Fact
from tests.proof.oracle.sets import unpacked


def facts_in(proof: Proof, number: int) -> dict[Fact, Detail]:
    """Everything that holds in one configuration. The states found are told for the whole set, see `found`."""
    facts: dict[Fact, Detail] = {}
    for told in all_told(proof):
        if told.where >> number & 1:
            fact, detail = fact_of(told), Detail()
            if isinstance(told, Unmet):
                pairs = zip(told.blames, told.blamed_in, strict=True)
                detail = Detail(frozenset(key for key, bits in pairs if bits >> number & 1))
            facts[fact] = facts[fact].joined(detail) if fact in facts else detail
    return facts


def all_told(proof: Proof) -> list[Unmet | Parting | Ending]:
    """All that was found."""
    return [*proof.unmet, *proof.partings, *proof.endings]


def fact_of(told: Unmet | Parting | Ending) -> Fact:
    """What makes a finding that one and no other."""
    match told:
        case Unmet(need=need):
            place = told.span.start
            return Fact("unmet", need.name, told.thing, told.step.id, place, _id(told.after))
        case Parting(fork=fork):
            place = -1 if fork is None else fork.span.start
            return Fact("parting", "", told.thing, told.step.id, place, _id(told.after))
        case Ending():
            return Fact("ending", told.because, told.thing, after=_id(told.after))


def states_of(told: Unmet | Parting | Ending) -> Detail:
    """The states that a finding speaks of."""
    match told:
        case Unmet():
            return Detail(found=unpacked(told.found))
        case Parting():
            return Detail(found=unpacked(told.first), other=unpacked(told.second))
        case Ending():
            return Detail(found=unpacked(told.found), other=unpacked(told.wanted))


def _id(stage: Stage | None) -> str:
    return "" if stage is None else stage.id
