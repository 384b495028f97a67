"""A catalogue is no longer a catalogue: a quote is missing, a keyword is mistyped.

Nothing of it is shown, so the page is in the source's words until it is mended. It is never written over.

Source: GNU gettext manual, "The Format of PO Files".
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category, Loudness

RULE = Rule(category=Category.TRANSLATION, loudness=Loudness.ERROR)

MESSAGE = "this catalogue can't be read here: {what}"

HELP = "mend this line, or bring the file back from the version control system"
