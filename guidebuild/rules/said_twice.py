"""A sentence says once more what an act of the same step says already.

The tool says each act from the record, in every language, with the right number of screws. A
sentence beside it that says the same is read twice, translated by hand, and stays wrong when the
record changes.

Only a sentence that adds nothing is meant: "Remove the cover." beside the act. What adds a way, a
place or a sign ("Lift the cover at its lower edge first") is what prose is for.

Source: common practice, no source.
"""

import re
from collections.abc import Iterator
from functools import cache, lru_cache
from typing import TypeAlias

from guidebuild.device.record import POWER, Device
from guidebuild.device.states import Kind
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.inside import acts
from guidebuild.guide.language.commands import command
from guidebuild.guide.language.lists import Lists, lists
from guidebuild.guide.language.spoken import Sort, spoken
from guidebuild.guide.language.words import tokens
from guidebuild.guide.step import Step
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category, Related

RULE = Rule(category=Category.TEXT)

MESSAGE = "this sentence says what an act of the step says already"

HELP = "take the sentence out, or say what the act can't: which way, where to hold, what one feels"

_KINDS = {
    Kind.FASTENER: {"screw", "screws", "fastener", "fasteners"},
    Kind.CONNECTOR: {"plug", "plugs", "connector", "connectors", "cable", "cables"},
    Kind.JOINT: {"clip", "clips", "joint", "joints", "seal", "adhesive", "hooks"},
    Kind.PART: set(),
    Kind.STORE: set(),
    Kind.POWER: {"device", "power", "unit"},
}
_PHRASE = re.compile(r"[a-z]+")

# The words of a phrase that says an act's verb (`take`, `off`), and the acts that it says.
Way: TypeAlias = tuple[set[str], frozenset[str]]


def check(proof: Proof) -> Iterator[Hit]:
    words = lists(proof.guide.language)
    for sentence in spoken(proof.guide) if words else ():
        assert words is not None
        if sentence.sort is Sort.STEP and sentence.step is not None:
            said, ways = _told(sentence.text, words)
            act = _twin(said, ways, sentence.step, proof.device, words) if ways else None
            if act is not None:
                yield Hit(sentence.at(), related=(Related(act.span, "the act that says it"),))


def _twin(
    said: tuple[str, ...], ways: tuple[Way, ...], step: Step, device: Device, words: Lists
) -> Act | None:
    for act in acts(step):
        verbs = next((parts for parts, verbs in ways if act.verb.value in verbs), None)
        if verbs and _only_names(said, verbs, act, device, words):
            return act
    return None


@lru_cache(maxsize=4096)
def _told(text: str, words: Lists) -> tuple[tuple[str, ...], tuple[Way, ...]]:
    """The words of a sentence that tells to do something and nothing more, and what that may be."""
    told = command(text, words)
    if told is None or told.negative or told.start > 0:
        return (), ()  # behind a condition or an adverb it says more
    said = tuple(text.lower() for _, text, _, _ in tokens(text))
    ways = _phrases(words).get(said[0], ()) if said else ()
    return said, tuple(way for way in ways if way[0] <= set(said))


@cache
def _phrases(words: Lists) -> dict[str, list[Way]]:
    """By its first word: the words of each phrase, and the acts that it says."""
    found: dict[str, list[Way]] = {}
    for phrase, acts_said in words.same.items():
        parts = _PHRASE.findall(phrase)
        if parts:
            found.setdefault(parts[0], []).append((set(parts), acts_said))
    return found


def _only_names(
    said: tuple[str, ...], verbs: set[str], act: Act, device: Device, words: Lists
) -> bool:
    """Whether what is left of the sentence is the target's name, or its kind, and small words."""
    left = [
        word
        for word in said
        if word not in verbs and word not in words.small and not word.isdigit()
    ]
    undone = act.undo + act.do_up if isinstance(act, PartAct) else ()
    for target in (*act.targets, *undone):
        if left and set(left) <= _names(target.text, device):
            return True
    return not left and "it" not in said and "them" not in said


def _names(written: str, device: Device) -> set[str]:
    names: set[str] = set()
    for key in device.names.get(written, (POWER,) if written == POWER else ()):
        thing = device.things[key]
        names |= _KINDS[thing.kind]
        names |= set(_PHRASE.findall(thing.name.text.lower())) if thing.name else set()
    return names
