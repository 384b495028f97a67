"""The guide names a kit and uses nothing of it.

The reader orders it for nothing, or takes what is in it for the part that is changed.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.device.acts import Verb
from guidebuild.device.kit import Kit
from guidebuild.guide.content import Content
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.consumed import consumed
from guidebuild.proof.questions.history import by_verb
from guidebuild.proof.questions.tools import tools_needed
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "nothing of the kit {kit} is used in this guide"

HELP = "take it out of `kits:`, or write the act that changes what it brings"

_FITTING = (Verb.EXCHANGE, Verb.RENEW, Verb.ADD)


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    if not proof.guide.kits:
        return
    used = {one.item for one in consumed(proof)} | _fitted(proof)
    used |= {tool for need in tools_needed(proof, content.tools) for tool in need.choices}
    for use in proof.guide.kits:
        if not _all_of(use.kit) & used:
            yield Hit(use.named, {"kit": use.kit.id})


def _fitted(proof: Proof) -> set[str]:
    """Parts that are exchanged, renewed or added: what a kit `brings` is for."""
    done = by_verb(proof)
    moves = (one.doing for verb in _FITTING for one in done.get(verb, ()))
    return {proof.device.things[move.thing].id for move in moves if isinstance(move, Move)}


def _all_of(kit: Kit) -> set[str]:
    of_forms = [one.item.text for form in kit.forms for one in form.materials]
    tools = [tool.text for tool in (*kit.tools, *(one for form in kit.forms for one in form.tools))]
    return {
        *(one.text for one in kit.brings),
        *(one.item.text for one in kit.materials),
        *of_forms,
        *tools,
    }
