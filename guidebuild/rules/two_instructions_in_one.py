"""One sentence tells the reader to do two things, one after the other.

The second is skipped more often than any other instruction: the eye goes back to the device after
the first. Two things done at the same time ("hold the cover and turn the knob") belong together and
may stand together.

Source: rule 5.2 in public digests of simplified technical English (restated).
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from guidebuild.guide.language.commands import Command, command
from guidebuild.guide.language.lists import Lists, lists
from guidebuild.guide.language.spoken import Sort, spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "this sentence tells two things: {first} and {second}"

HELP = "give the second one a sentence of its own"

# The second verb counts only where an object or a direction follows: "screw", "clip" and "cover" are nouns too.
_AND_THEN = re.compile(
    r"(?:,?\s+and(?:\s+then)?|,\s+then|;)\s+(?P<verb>[a-z]+)\s+"
    r"(?:the|a|an|it|them|its|their|both|each|all|that|this|up|out|off|on|in|down|away)\b"
)
_HELD = {
    "hold",
    "keep",
    "press",
    "support",
    "push",
    "pull",
    "squeeze",
}  # goes on while the other is done


def check(proof: Proof) -> Iterator[Hit]:
    words = lists(proof.guide.language)
    for sentence in spoken(proof.guide) if words else ():
        assert words is not None
        told = _two(sentence.text, words) if sentence.sort in (Sort.STEP, Sort.NOTE) else None
        if told is not None:
            first, second = told
            place = sentence.at(second.start("verb"), second.end("verb"))
            yield Hit(place, {"first": first.verb, "second": second["verb"]})


@lru_cache(maxsize=4096)
def _two(text: str, words: Lists) -> tuple[Command, re.Match[str]] | None:
    """The first command of a sentence and the second, where there are two."""
    first = command(text, words)
    if first is None or first.verb in _HELD:
        return None
    found = _AND_THEN.finditer(text, first.end)
    second = next((one for one in found if one["verb"] in words.verbs), None)
    return None if second is None else (first, second)
