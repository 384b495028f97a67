"""A part is written in another way than its name in the record.

"Print head", "printhead" and "print-head" are one part to the writer, and three to a search, to a
translator and to the person who looks for it in a list.

Source: rule 1.11 in public digests of simplified technical English (restated): one technical noun
for one item.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache, lru_cache

from guidebuild.device.record import Device
from guidebuild.guide.language.spoken import spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Category
from guidebuild.source.remembered import remembered

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{words}` is called `{name}` in the record"

HELP = "write `{name}`, as the record does"

_GAP = r"[\s\u00a0-]?"


def check(proof: Proof) -> Iterator[Hit]:
    names = _names(proof.device)
    for sentence in spoken(proof.guide):
        for start, end, name in _otherwise(sentence.text, names):
            place, said = sentence.at(start, end), sentence.text[start:end]
            better = name if said[:1].isupper() else name[:1].lower() + name[1:]
            yield Hit(place, {"words": said, "name": better}, edits=(Edit(place, better),))


@dataclass(frozen=True, slots=True, eq=False)  # one object for a record: told apart by identity
class _Names:
    """The names of several words in a record, and each all in one."""

    several: tuple[tuple[str, str], ...]


@remembered
def _names(device: Device) -> _Names:
    names = {thing.name.text for thing in device.things.values() if thing.name}
    return _Names(
        tuple(
            (name, _glance(name))
            for name in sorted(names)
            if len(re.split(_GAP, name)) > 1 or " " in name
        )
    )


@lru_cache(maxsize=4096)
def _otherwise(text: str, names: _Names) -> tuple[tuple[int, int, str], ...]:
    """Where a text says one of the names in another way, and that name."""
    glance = _glance(text)
    return tuple(
        (*found.span(), name)
        for name, joined in names.several
        if joined in glance
        for found in _twins(name).finditer(text)
        if _joined(found[0]) == _joined(name) and found[0].lower() != name.lower()
    )


def _glance(text: str) -> str:
    """All of a text in one: what is not in it is not in the text in any way of writing."""
    return "".join(text.split()).replace("-", "").casefold()


@cache
def _twins(name: str) -> re.Pattern[str]:
    """The name's words with a space, a hyphen or nothing between them."""
    words = [re.escape(word) for word in re.split(r"[\s-]+", name)]
    return re.compile(rf"\b{_GAP.join(words)}\b", re.IGNORECASE)


def _joined(text: str) -> str:
    return re.sub(r"[\s\u00a0-]", "", text).lower()
