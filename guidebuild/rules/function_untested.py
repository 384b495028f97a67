"""A plug or contact was opened, and the function that it carries is not tested before the guide ends.

A plug that sits askew looks like one that sits right. The test is the only way to see it, and the
time for it is before the screws go back in. The record says with `carries` which functions fail
when a plug is not right; a check says with `tests` which ones it tries.

Source: verification after maintenance work as the guard against wrong installation (30 % of 122
maintenance errors at one airline), Graeber and Marx 1993 as restated by Busch 2008; not read in the
original.
"""

from collections.abc import Iterator

from guidebuild.device.naming import listed, lowered, subject
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import place, told
from guidebuild.proof.questions.joined import shown
from guidebuild.proof.questions.testing import Closed, untested
from guidebuild.source.finding import Category
from guidebuild.source.span import Span

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "nothing tests {function} after {thing} {was} opened and closed again"

HELP = (
    "add a check with `tests:` after this, before the device is closed; "
    "name in it each function that {thing} carries"
)


def check(proof: Proof) -> Iterator[Hit]:
    last: dict[str, Closed] = {}
    where: dict[str, int] = {}
    for closed in untested(proof):
        last[closed.function] = closed
        where[closed.function] = where.get(closed.function, 0) | closed.where
    together: dict[tuple[Span, int], list[Closed]] = {}
    for closed in last.values():
        together.setdefault((place(closed.move), where[closed.function]), []).append(closed)
    for (span, bits), group in together.items():
        yield _hit(proof, span, bits, group)


def _hit(proof: Proof, span: Span, where: int, group: list[Closed]) -> Hit:
    names = [proof.device.functions.get(one.function) for one in group]
    thing = subject(proof.device, [group[0].move.thing])
    words = {
        "function": listed([lowered(name.text) if name else "?" for name in names]),
        "thing": thing["thing"],
        "was": "was" if thing["is"] == "is" else "were",
    }
    return Hit(
        span, words, (told(proof, group[0].opened),), where, shown(proof, group[0].move.step)
    )
