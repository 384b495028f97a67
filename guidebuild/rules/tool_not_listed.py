"""A screw's drive fits none of the tools that are listed.

The reader lays out what the guide lists. A driver that is not there is found out in the middle of the work, with the
cover off, and the next size is tried instead.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.naming import called
from guidebuild.guide.content import Content
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.tools import tools_needed, without_tool
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "no tool in tools.yaml fits {drive}, the drive of {thing}"

HELP = "list the driver in tools.yaml with `fits: {drive}`, or say `with:` which tool does it"


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    if not without_tool(proof.device, content.tools):
        return
    told: set[str] = set()
    for need in tools_needed(proof, content.tools):
        if need.drive and not need.choices and need.drive not in told:
            told.add(need.drive)
            words = {"drive": need.drive, "thing": called(proof.device, need.thing)}
            yield Hit(need.span, words, where=need.where)
