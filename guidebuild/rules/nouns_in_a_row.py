"""A name is a row of more than three nouns, and nobody knows which belongs to which.

"Main board power cable plug holder" is a plug, a cable or a holder. At most three words, with a
hyphen where two belong together.

Source: rules 2.1 and 2.2 in public digests of simplified technical English (restated);
plainlanguage.gov says the same of noun strings.
"""

from collections.abc import Iterator

from guidebuild.device.record import Device
from guidebuild.guide.language.lists import lists
from guidebuild.guide.language.words import tokens
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category
from guidebuild.source.remembered import remembered
from guidebuild.source.said import Said

RULE = Rule(category=Category.TEXT)

MESSAGE = "the name `{name}` is {count} words in a row"

HELP = "name it in three words at most, or join two that belong together by a hyphen"

MOST = 3
_PARTED = {"of", "for", "with", "to", "in", "on", "and", "under", "behind", "beside", "the", "a"}


def check(proof: Proof) -> Iterator[Hit]:
    if lists(proof.guide.language) is None:
        return
    for name, count in _long(proof.device):
        yield Hit(name.span, {"name": name.text, "count": count})


@remembered
def _long(device: Device) -> tuple[tuple[Said, int], ...]:
    """Each name of a record that is too long, and how many words it has."""
    names = dict.fromkeys(thing.name for thing in device.things.values() if thing.name)
    said = [(name, [text.lower() for _, text, _, _ in tokens(name.text)]) for name in names]
    return tuple(
        (name, len(words)) for name, words in said if len(words) > MOST and not _PARTED & set(words)
    )
