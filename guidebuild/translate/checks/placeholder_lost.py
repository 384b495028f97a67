"""A numbered code of the source is missing in the translation, or stands there twice or crossed.

A code is a mark or a link of the author's. Lost, the word that it was for stands bare; crossed, the sentence can't be
shown at all and the reader gets the source.

Source: the check `xmltags` of general translation toolkits does the same; measured in the reference on localisation.
"""

from collections import Counter
from collections.abc import Iterator

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category, Loudness
from guidebuild.translate.catalogue.pair import Pair, Slip
from guidebuild.translate.segments.codes import decoded, numbers_in

RULE = Rule(category=Category.TRANSLATION, loudness=Loudness.ERROR)

MESSAGE = "the translation {what}"

HELP = "copy the codes from the source as they stand there: {codes}; they may change places, not nest crosswise"


def check_pair(pair: Pair) -> Iterator[Slip]:
    wanted, there = numbers_in(pair.segment.text), numbers_in(pair.text)
    lost = list((Counter(wanted) - Counter(there)).elements())
    much = list((Counter(there) - Counter(wanted)).elements())
    codes = " ".join(wanted) or "none"
    if lost or much:
        what = (
            f"has lost {' '.join(lost)}"
            if lost
            else f"has {' '.join(much)}, which the source has not"
        )
        yield Slip(0, len(pair.text), {"what": what, "codes": codes})
    elif decoded(pair.text, pair.segment.codes, pair.segment.span) is None:
        yield Slip(0, len(pair.text), {"what": "has its codes nested crosswise", "codes": codes})
