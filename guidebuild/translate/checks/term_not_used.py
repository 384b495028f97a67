"""A term of the source is translated by another word than the approved one.

One thing, one word: a part that has two names in one guide is looked for twice.

Source: common practice, no source; the publisher's own list is `terms.yaml`.
"""

import re
from collections.abc import Iterator

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category
from guidebuild.translate.catalogue.pair import Pair, Slip

RULE = Rule(category=Category.TRANSLATION)

MESSAGE = "`{source}` is not translated by `{term}`"

HELP = "use `{term}`, inflected as the sentence needs it"

_STEM = 0.7  # so much of the term's length must be there: languages inflect at the end


def check_pair(pair: Pair) -> Iterator[Slip]:
    said = pair.text.casefold()
    for source, term in pair.terms.items():
        if re.search(rf"\b{re.escape(source)}", pair.segment.text, re.IGNORECASE):
            stem = term.casefold()[: max(3, round(len(term) * _STEM))]
            if stem not in said:
                yield Slip(0, len(pair.text), {"source": source, "term": term})
