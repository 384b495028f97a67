"""A caution uses a weaker signal word than the record has for the same hazard.

The signal word is what a reader in a hurry sees. Who knows the device wrote "warning" into the
record; a guide that says "notice" of the same hazard takes it back. Seen only where the guide's
words are the record's, or where it names it.

Source: ANSI Z535.4-2007, the signal word follows the gravest outcome, as restated by a vendor of
labels.
"""

from collections.abc import Iterator

from guidebuild.device.record import Hazard
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.inside import cautions, steps_with
from guidebuild.guide.signal_words import gravity
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Passage, Proof
from guidebuild.proof.questions.cautioned import keys_of, tells
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.SAFETY)

MESSAGE = "this is called {level}, and the record calls the hazard {hazard} {graver}"

HELP = "use the record's own words, `for: {hazard}`, or its signal word"


def check(proof: Proof) -> Iterator[Hit]:
    for passage in proof.passages if steps_with(proof.guide, Caution) else ():
        for caution in cautions(passage.step):
            if caution.level is not None:
                for hazard in _told(proof, passage, caution):
                    if gravity(caution.level.text) > gravity(hazard.level):
                        words = {
                            "level": caution.level.text,
                            "hazard": hazard.id,
                            "graver": hazard.level,
                        }
                        related = (Related(hazard.span, "the record tells of it here"),)
                        yield Hit(caution.level.span, words, related)


def _told(proof: Proof, passage: Passage, caution: Caution) -> Iterator[Hazard]:
    """The hazards that this step handles and that the caution speaks of in words of its own."""
    moved = {one.doing.thing for one in passage.walked if isinstance(one.doing, Move)}
    for hazard in proof.device.hazards.values():
        if keys_of(proof.device, hazard) & moved and tells(caution, hazard):
            yield hazard
