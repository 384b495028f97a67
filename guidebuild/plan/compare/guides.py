"""Two guides, or two issues of one, told apart step by step."""

from collections.abc import Callable, Iterator, Mapping

from guidebuild.device.states import State
from guidebuild.guide.guide import Guide
from guidebuild.guide.step import Step
from guidebuild.plan.compare.change import Change, Difference, Touched
from guidebuild.plan.compare.conditions import written
from guidebuild.plan.compare.lines import lines


def guide_differences(one: Guide, other: Guide) -> list[Difference]:
    """What the front matter says otherwise; steps that are new, gone, moved or changed."""
    found = [Difference(change, ()) for change in _front(one, other)]
    before = {step.id: step for step in one.steps}
    after = {step.id: step for step in other.steps}
    for id_, step in after.items():
        here = (Touched(other.title.text, other.path, id_, step.title.text),)
        if id_ not in before:
            found.append(
                Difference(Change(f'The step "{step.title}" is new.', frozenset({id_})), here)
            )
            continue
        for words in _step(before[id_], step):
            change = Change(f'In the step "{step.title}" {words}', frozenset({id_}))
            found.append(Difference(change, here))
    for id_, step in before.items():
        if id_ not in after:
            found.append(
                Difference(Change(f'The step "{step.title}" is gone.', frozenset({id_})), ())
            )
    if [id_ for id_ in before if id_ in after] != [id_ for id_ in after if id_ in before]:
        found.append(Difference(Change("The steps stand in another order.", frozenset()), ()))
    return found


def _front(one: Guide, other: Guide) -> Iterator[Change]:
    rows = {"The title": (one.title.text, other.title.text), "The goal": (_goal(one), _goal(other))}
    for head, said in _ROWS.items():
        rows[head] = said(one), said(other)
    for words, (old, new) in rows.items():
        if old != new:
            was, is_ = (text.strip().rstrip(".") or "nothing" for text in (old, new))
            yield Change(f"{words}: {is_}; it was: {was}.", frozenset())


_ROWS: dict[str, Callable[[Guide], str]] = {
    "The issue": lambda guide: str(guide.issue),
    "The status": lambda guide: str(guide.status),
    "Who may do it": lambda guide: f"{guide.skill or ''} {guide.only or ''}",
    "Kits": lambda guide: ", ".join(use.kit.id for use in guide.kits),
    "Before the work, data": lambda guide: str(guide.before.data or ""),
    "Before the work, charge": lambda guide: _charge(guide),
    "Before the work, people": lambda guide: str(guide.before.people or ""),
    "Before the work, bench": lambda guide: ", ".join(map(str, guide.before.bench or ())),
    "After the work": lambda guide: " ".join(map(str, guide.after)),
    "How things begin": lambda guide: _states(guide.starts),
    "How things end": lambda guide: _states(guide.ends),
}


def _charge(guide: Guide) -> str:
    most = guide.before.charge_most
    return f"{most:f} % at most" if most is not None else str(guide.before.charge_said or "")


def _states(said: Mapping[str, State]) -> str:
    return ", ".join(f"{id_} {str(state).lower()}" for id_, state in said.items())


def _goal(guide: Guide) -> str:
    return f"{guide.goal.verb} {', '.join(said.text for said in guide.goal.parts)}"


def _step(one: Step, other: Step) -> Iterator[str]:
    if one.title.text != other.title.text:
        yield f'the heading was "{one.title}".'
    if written(one.when) != written(other.when):
        yield f"the condition is {written(other.when) or 'none'} instead of {written(one.when) or 'none'}."
    before, after = list(lines(one)), list(lines(other))
    for line in after:
        if line not in before:
            yield f"this is new: {line}"
    for line in before:
        if line not in after:
            yield f"this is gone: {line}"
    if sorted(before) == sorted(after) and before != after:
        yield "the same is done in another order."
