"""A kit brings a tool that the guide never uses.

Either the act that needs it does not say so, and the reader uses another one, or it is paid for and thrown away.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.guide.content import Content
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.tools import tools_needed
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "the kit brings `{tool}`, and this guide never uses it"

HELP = "say `with: {tool}` in the act that it is for, or leave it out of the kit"


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    if not proof.guide.kits:
        return
    used = {tool for need in tools_needed(proof, content.tools) for tool in need.choices}
    for use in proof.guide.kits:
        brought = [*use.kit.tools, *(tool for form in use.kit.forms for tool in form.tools)]
        for tool in brought:
            if tool.text not in used:
                yield Hit(use.named, {"tool": tool.text})
