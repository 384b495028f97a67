"""`tool` and `material` blocks: what a step uses that no act implies."""

from guidebuild.guide.blocks.use import Use
from guidebuild.outputs.html.page.acts.line import Line, ToolUse
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.translate.messages.text import text


def use_line(reading: Reading, use: Use, among: int) -> Line | None:
    """`Use the torque handle`, `Use 1 alcohol wipe`; None where the condition never holds in `among`."""
    where = among & reading.configurations.bits(use.when)
    if not where or not use.items:
        return None
    say = reading.say
    names = say.listed([text(reading.inside(reading.tool(said.text))) for said in use.items])
    if use.amount is not None:
        amount = say.said(use.amount)
        do = say("act.use-amount", amount=amount, names=names)
    else:
        do = say(f"act.use-{use.what}", names=names)
    tools = tuple(ToolUse((said.text,)) for said in use.items) if use.what == "tool" else ()
    return Line(
        do=do,
        things=(),
        where=where,
        notes=(reading.author.words(use.note),) if use.note else (),
        tools=tools,
        when=reading.when(where, among),
    )
