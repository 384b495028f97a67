"""What is done on the bench with the old and the new unit, and what is only looked at in its place."""

from collections.abc import Sequence

from guidebuild.device.acts import Verb
from guidebuild.plan.draft.closing import Closing
from guidebuild.plan.draft.desk import Desk
from guidebuild.plan.draft.names import name, names, plural, title
from guidebuild.plan.draft.script import Block, Stage, Step
from guidebuild.plan.draft.steps import closing_groups, opening_groups
from guidebuild.plan.draft.work import Work
from guidebuild.plan.draft.writing import Writer


def prepare(
    desk: Desk,
    parts: Sequence[str],
    moved: Sequence[Work],
    closings: Sequence[Closing],
    verb: Verb = Verb.EXCHANGE,
) -> Stage:
    """What sits on the old unit goes over to the new one; its packing comes off. `verb`: `exchange`, or `add`."""
    writer, layout = Writer(desk), desk.layout
    found: list[Step] = [writer.step(one) for one in opening_groups(layout, moved)]
    found += [_unpacked(desk, part, writer, verb) for part in parts]
    for one in desk.device.parts:
        if one.packing:
            work = Work(Verb.REMOVE, (one.key,), layout.presence.where[one.key])
            found.append(writer.step([work], f"Peel the {name(desk.device, one.key)} off"))
    works = [work for one in closings for work in one.works]
    found += [writer.step(group) for group in closing_groups(layout, works)]
    return Stage(f"Prepare {new(desk, parts)}", tuple(found))


def new(desk: Desk, parts: Sequence[str]) -> str:
    """`the new seat ring`; of several `the new parts`."""
    return f"the new {name(desk.device, parts[0])}" if len(parts) == 1 else "the new parts"


def _unpacked(desk: Desk, part: str, writer: Writer, verb: Verb) -> Step:
    called = name(desk.device, part)
    work = Work(verb, (part,), desk.layout.presence.where[part])
    expect = {
        "expect": f"The new {called} is the right one, and it is not damaged.",
        "stop": "Put it back into its box and ask for another.",
    }
    return writer.step([work], f"Unpack the new {called}", [Block("check", (expect,))])


def look_at(desk: Desk, parts: Sequence[str], goal: str) -> Stage:
    """The parts in their places, once a hand gets there."""
    writer = Writer(desk)
    them = names(desk.device, parts)
    place = "its place" if len(parts) == 1 else "their places"
    steps = tuple(_looked_at(desk, part, goal, writer) for part in parts)
    return Stage(f"{title(goal)} {them} in {place}", steps)


def _looked_at(desk: Desk, part: str, goal: str, writer: Writer) -> Step:
    called = name(desk.device, part)
    check = {
        "expect": f"The {called} {'are' if plural(called) else 'is'} in order.",
        "stop": f"Write down what you see, and ask the help line for a new {called}.",
    }
    cautions = tuple(writer.cautions(frozenset({part})))
    heading = desk.titled(f"{title(goal)} the {called}")
    return Step(heading, (*cautions, Block("check", (check,))))
