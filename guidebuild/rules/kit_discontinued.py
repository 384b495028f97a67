"""The guide names a kit that another one has replaced, or that is no longer sold.

The reader orders a number that nobody answers to, or gets the newer form without its steps.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "the kit {kit} {why}"

HELP = "name {instead} in `kits:` and go through the steps with it; keep this issue for stock that is left"


def check(proof: Proof) -> Iterator[Hit]:
    for use in proof.guide.kits:
        kit = use.kit
        if kit.replaced_by is not None:
            words = {
                "why": f"is replaced by {kit.replaced_by.text}",
                "instead": kit.replaced_by.text,
            }
            said = kit.replaced_by
        elif kit.until is not None:
            words = {
                "why": f"is sold until {kit.until.text} only",
                "instead": "the kit that follows it",
            }
            said = kit.until
        else:
            continue
        related = (Related(said.span, "said here"),)
        yield Hit(use.named, {"kit": kit.id, **words}, related)
