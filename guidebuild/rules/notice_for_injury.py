"""A signal word that is for damage stands over words that speak of an injury.

"Notice" says that only things can break. The reader who has learnt that goes on with bare hands.
Only words for an outcome are looked for ("injury", "death", "burns your", ...), so it may be wrong,
and it is silent where there are no lists of a language.

Source: ANSI Z535.4-2007, 4.14.4: notice addresses "practices not related to personal injury", as
restated by a vendor of labels. With the setting `profile: two-level`: a warning is any injury, as
public notes restate STE section 7.
"""

from collections.abc import Iterator

from guidebuild.guide.content import Content
from guidebuild.guide.signal_words import speaks_of_injury, words_for_injury
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.cautioned import safety_messages
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "{level} is for damage, and these words speak of an injury"

HELP = "call it {better}; which, goes by how grave the injury can be"


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    profile = content.settings.profile
    right = words_for_injury(profile)
    for one in safety_messages(proof) if proof.guide.language.startswith("en") else ():
        if one.level not in right and speaks_of_injury(one.outcome):
            yield Hit(one.span, {"level": one.level, "better": " or ".join(right)})
