"""A caution asks for an act that the guide needs, and no step does it.

Readers skip cautions that they have seen before, and the act with them; the proof does not count
it, and no tally shows it. An act that only avoids the hazard ("put on a wrist strap") belongs here.
Meant is an act on a thing of the record that the guide never does.

Source: no instruction that the job needs stands in a caution, DOE-STD-1029 and NUREG-0899; from
memory, not checked.
"""

import re
from collections.abc import Iterator

from guidebuild.device.acts import TABLE, Verb
from guidebuild.device.naming import called
from guidebuild.device.record import Device
from guidebuild.guide.language.commands import command
from guidebuild.guide.language.lists import Lists, lists
from guidebuild.guide.language.spoken import Sentence, Sort, spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.history import walked
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "this asks to {verb} {thing}, and no step does it"

HELP = "write it as an act in a step before, and leave here what avoids the hazard"


def check(proof: Proof) -> Iterator[Hit]:
    words = lists(proof.guide.language)
    done = {
        (one.doing.thing, one.doing.verb) for one in walked(proof) if isinstance(one.doing, Move)
    }
    for sentence in spoken(proof.guide) if words else ():
        assert words is not None
        if sentence.sort is Sort.CAUTION:
            asked = _asked(proof, sentence, words)
            if asked is not None and not asked[1] & done:
                verb, acts = asked
                key = next(iter(sorted(key for key, _ in acts)))
                yield Hit(sentence.at(), {"verb": verb, "thing": called(proof.device, key)})


def _asked(
    proof: Proof, sentence: Sentence, words: Lists
) -> tuple[str, set[tuple[str, Verb]]] | None:
    """The verb in words, and the acts of which one would do what the sentence asks."""
    told = command(sentence.text, words)
    if told is None or told.negative:
        return None
    rest = sentence.text[told.start :].lower()
    for phrase, acts in words.same.items():
        if rest.startswith(f"{phrase} "):
            keys = _named(proof.device, rest[len(phrase) :])
            asked = {
                (key, verb)
                for key in keys
                for verb in Verb
                if verb.value in acts and (proof.device.things[key].kind, verb) in TABLE
            }
            if asked:
                return phrase, asked
    return None


def _named(device: Device, rest: str) -> list[str]:
    """Things whose name comes next, as `the battery plug`."""
    return [
        key
        for key, thing in device.things.items()
        if thing.name is not None
        and re.match(rf"\s*(?:the |your |its )?{re.escape(thing.name.text.lower())}\b", rest)
    ]
