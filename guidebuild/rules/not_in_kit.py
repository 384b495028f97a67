"""The guide needs something that no kit brings and no bench has, or more of it than the kit brings.

Counted on the worst path: a seal that is renewed again on each second try is needed as often. The reader finds out with
the device open, and closes it with the old seal.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.guide.content import Content
from guidebuild.guide.guide import Guide
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.consumed import Consumed, consumed
from guidebuild.proof.questions.tools import tools_needed
from guidebuild.source.finding import Category

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{what}"

HELP = "{help}"


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    if not proof.guide.kits:
        return  # a guide without a kit lists what it needs, and the reader brings it
    yield from _tools(proof, content)
    for one in consumed(proof):
        tool = content.tools.get(one.item)
        if tool is not None and tool.basic:
            continue
        brought = _brought(proof.guide, one.item)
        if brought < one.count:
            yield Hit(one.first, _words(one, brought))


def _words(one: Consumed, brought: int) -> dict[str, str]:
    tries = f", {one.tries} of them on second tries" if one.tries else ""
    kit = f"the kit brings {brought}" if brought else "no kit brings it"
    return {
        "what": f"this guide needs {one.count} of `{one.item}`{tries}; {kit}",
        "help": f"bring {one.count} of `{one.item}` in the kit's `materials`, or allow fewer tries",
    }


def _brought(guide: Guide, item: str) -> int:
    """So many of an item come with the kits, in the form that brings the fewest."""
    total = 0
    for use in guide.kits:
        total += sum(int(one.count) for one in use.kit.materials if one.item.text == item)
        total += sum(1 for brings in use.kit.brings if brings.text == item)
        total += min(
            sum(int(one.count) for one in form.materials if one.item.text == item)
            for form in use.kit.forms
        )
    return total


def _tools(proof: Proof, content: Content) -> Iterator[Hit]:
    kits = [use.kit for use in proof.guide.kits]
    in_kits = {tool.text for kit in kits for tool in kit.tools}
    in_kits |= {tool.text for kit in kits for form in kit.forms for tool in form.tools}
    basic = {id_ for id_, tool in content.tools.items() if tool.basic}
    told: set[tuple[str, ...]] = set()
    for need in tools_needed(proof, content.tools):
        known = [tool for tool in need.choices if tool in content.tools]
        if not known or set(known) & (in_kits | basic) or need.choices in told:
            continue
        told.add(need.choices)
        name = " or ".join(f"`{tool}`" for tool in known)
        words = {
            "what": f"{name} is needed here; no kit brings it, and it is not basic",
            "help": "list it in the kit's `tools`, or say `basic: true` in tools.yaml if every bench has it",
        }
        yield Hit(need.span, words, where=need.where)
