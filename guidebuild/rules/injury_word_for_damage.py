"""A signal word that is for injuries stands over words that speak of damage only.

Who reads "warning" over a scratched cover reads the next one less. Only words for an outcome are
looked for ("damage", "break", ...), so it may be wrong, and it is silent where there are no lists
of a language.

Source: ANSI Z535.6: notice is for messages "relating to property damage", as restated in OASIS DITA
2.0. With the setting `profile: two-level`: a caution is damage to objects, as public notes restate
STE section 7.
"""

from collections.abc import Iterator

from guidebuild.guide.content import Content
from guidebuild.guide.signal_words import speaks_of_damage, speaks_of_injury, words_for_damage
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cautioned import safety_messages
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "{level} is for injuries, and these words speak of damage only"

HELP = "call it {better}, or say what it does to the reader"


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    profile = content.settings.profile
    right = words_for_damage(profile)
    for one in safety_messages(proof) if proof.guide.language.startswith("en") else ():
        text = one.outcome
        if one.level not in right and speaks_of_damage(text) and not speaks_of_injury(text):
            yield Hit(one.span, {"level": one.level, "better": right[0]})
