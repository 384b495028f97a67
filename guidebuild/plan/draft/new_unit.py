"""What is done on the bench with the old and the new unit, and what is only looked at in its place."""

from collections.abc import Sequence

from guidebuild.device.acts import Verb
from guidebuild.plan.draft.closing import Closing
from guidebuild.plan.draft.desk import Desk
from guidebuild.plan.draft.names import name, title
from guidebuild.plan.draft.script import Block, Stage, Step
from guidebuild.plan.draft.steps import closing_groups, opening_groups
from guidebuild.plan.draft.work import Work
from guidebuild.plan.draft.writing import Writer


def prepare(desk: Desk, part: str, moved: Sequence[Work], closings: Sequence[Closing]) -> Stage:
    """What sits on the old unit goes over to the new one; its packing comes off."""
    writer, layout = Writer(desk), desk.layout
    found: list[Step] = [writer.step(one) for one in opening_groups(layout, moved)]
    found.append(_unpacked(desk, part, writer))
    for one in desk.device.parts:
        if one.packing:
            work = Work(Verb.REMOVE, (one.key,), layout.presence.where[one.key])
            found.append(writer.step([work], f"Peel the {name(desk.device, one.key)} off"))
    works = [work for one in closings for work in one.works]
    found += [writer.step(group) for group in closing_groups(layout, works)]
    return Stage(f"Prepare the new {name(desk.device, part)}", tuple(found))


def _unpacked(desk: Desk, part: str, writer: Writer) -> Step:
    called = name(desk.device, part)
    work = Work(Verb.EXCHANGE, (part,), desk.layout.presence.where[part])
    expect = {
        "expect": f"The new {called} is the right one, and it is not damaged.",
        "stop": "Put it back into its box and ask for another.",
    }
    return writer.step([work], f"Unpack the new {called}", [Block("check", (expect,))])


def look_at(desk: Desk, part: str, goal: str) -> Stage:
    """The part in its place, once a hand gets there."""
    called, verb = name(desk.device, part), title(goal)
    check = {
        "expect": f"The {called} is in order.",
        "stop": f"Write down what you see, and ask the help line for a new {called}.",
    }
    cautions = tuple(Writer(desk).cautions(frozenset({part})))
    step = Step(desk.titled(f"{verb} the {called}"), (*cautions, Block("check", (check,))))
    return Stage(f"{verb} the {called} in its place", (step,))
