"""Two guides, or two issues of one, told apart step by step."""

from collections.abc import Iterator

from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.blocks.use import Use
from guidebuild.guide.blocks.wait import Wait
from guidebuild.guide.guide import Guide
from guidebuild.guide.inside import items
from guidebuild.guide.prose import Paragraph
from guidebuild.guide.step import Step
from guidebuild.plan.compare.change import Change, Difference, Touched
from guidebuild.plan.compare.conditions import written


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
    for words, old, new in (
        ("The title", one.title.text, other.title.text),
        ("The issue", str(one.issue), str(other.issue)),
        ("The status", str(one.status), str(other.status)),
        ("Who may do it", f"{one.skill} {one.only or ''}", f"{other.skill} {other.only or ''}"),
        ("The goal", _goal(one), _goal(other)),
        (
            "What the kits are",
            ", ".join(use.kit.id for use in one.kits),
            ", ".join(use.kit.id for use in other.kits),
        ),
        ("What is asked for before", _before(one), _before(other)),
        ("What is done after", "; ".join(map(str, one.after)), "; ".join(map(str, other.after))),
    ):
        if old != new:
            yield Change(
                f"{words}: {new.strip() or 'nothing'} instead of {old.strip() or 'nothing'}.",
                frozenset(),
            )


def _goal(guide: Guide) -> str:
    return f"{guide.goal.verb} {', '.join(said.text for said in guide.goal.parts)}"


def _before(guide: Guide) -> str:
    before = guide.before
    bench = ", ".join(map(str, before.bench)) if before.bench is not None else None
    said = (
        ("data", before.data),
        ("charge", before.charge_said),
        ("people", before.people),
        ("bench", bench),
    )
    return "; ".join(f"{word} {value}" for word, value in said if value is not None)


def _step(one: Step, other: Step) -> Iterator[str]:
    if one.title.text != other.title.text:
        yield f'the heading was "{one.title}".'
    if written(one.when) != written(other.when):
        yield f"the condition is {written(other.when) or 'none'} instead of {written(one.when) or 'none'}."
    before, after = list(_lines(one)), list(_lines(other))
    for line in after:
        if line not in before:
            yield f"this is new: {line}"
    for line in before:
        if line not in after:
            yield f"this is gone: {line}"
    if sorted(before) == sorted(after) and before != after:
        yield "the same is done in another order."


def _lines(step: Step) -> Iterator[str]:
    """What a step says, a line for each act, check, caution and sentence."""
    for item in items(step):
        match item:
            case Act():
                yield _act(item)
            case Check():
                ways = [
                    str(said)
                    for said in (item.if_not, item.stop, *(one.go for one in item.faults))
                    if said
                ]
                tests = f" (tests {', '.join(map(str, item.tests))})" if item.tests else ""
                yield f"check: {item.expect}{tests}" + (
                    f"; if not: {', '.join(ways)}" if ways else ""
                )
            case Caution():
                named = ", ".join(map(str, item.hazards)) or f"{item.level}: {item.hazard}"
                yield f"caution: {named}"
            case Wait():
                yield f"wait {item.time.value} {item.time.unit}"
            case Use():
                yield f"{item.what}: {', '.join(map(str, item.items))}"
            case Paragraph():
                yield f'"{item.text}"'
            case _:
                pass


def _act(act: Act) -> str:
    words = f"{act.verb.value} {', '.join(map(str, act.targets))}"
    if isinstance(act, PartAct) and act.undo:
        words += f", after undoing {', '.join(map(str, act.undo))}"
    if isinstance(act, PartAct) and act.do_up:
        words += f", then do up {', '.join(map(str, act.do_up))}"
    words += f" with {' or '.join(map(str, act.with_))}" if act.with_ else ""
    words += f" ({act.note})" if act.note else ""
    return words + (f" when {written(act.when)}" if act.when else "")
