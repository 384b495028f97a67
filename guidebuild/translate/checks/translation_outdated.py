"""The source has changed since the sentence was translated, or its translator is not sure of it.

What changed is told: wording, number, unit, negation, signal word. A caution, a number or a negation that is out of
date is not shown alone: the page shows the source first.

Source: of 2,742 prose edits of a public course, 183 changed a number in a sentence that was otherwise alike (measured):
so likeness decides nothing.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category
from guidebuild.translate.catalogue.change import Class, compared
from guidebuild.translate.catalogue.merge import signal_of
from guidebuild.translate.catalogue.pair import Pair, Slip

RULE = Rule(category=Category.TRANSLATION)

MESSAGE = "this translation is out of date: {what}"

HELP = "translate `{source}` anew, and take the mark `fuzzy` off"

UNSURE = "it is marked as `fuzzy`"


def check_pair(pair: Pair) -> Iterator[Slip]:
    entry = pair.entry
    if not pair.text:
        return
    made_for = entry.previous.source if entry.fuzzy and entry.previous.source else entry.source
    signals = (signal_of(entry), pair.segment.signal)
    change = compared(made_for, pair.segment.text, pair.source_language, signals)
    changed = change is not None and change.classes != {Class.COSMETIC}
    if changed or entry.fuzzy:
        what = "; ".join(change.words) if change is not None and changed else UNSURE
        yield Slip(0, len(pair.text), {"what": what, "source": pair.segment.text})
