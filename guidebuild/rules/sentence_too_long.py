"""A sentence has more words than a reader keeps in mind between two looks at the device.

On the bench a sentence is read once, from 70 cm, with something in the hands. An instruction has at
most 20 words, a description 25. A number with its unit is one word, and so is a hyphenated word, an
identifier or a text in quotes.

Source: the limits and the counting of public digests of simplified technical English (restated);
they are a convention on thin evidence, so this rule is about style.
"""

from collections.abc import Iterator

from guidebuild.guide.language.commands import command
from guidebuild.guide.language.lists import lists
from guidebuild.guide.language.spoken import Sort, spoken
from guidebuild.guide.language.words import count_words
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "this {kind} has {words} words"

HELP = "make two of it; {kind}s have at most {most} words"

INSTRUCTION, DESCRIPTION = 20, 25


def check(proof: Proof) -> Iterator[Hit]:
    words = lists(proof.guide.language)
    if words is None:
        return
    for sentence in spoken(proof.guide):
        count = count_words(sentence.text)
        if count <= INSTRUCTION:
            continue
        commands = sentence.sort is Sort.CAUTION or command(sentence.text, words) is not None
        most = INSTRUCTION if commands else DESCRIPTION
        if count > most:
            kind = "instruction" if commands else "description"
            yield Hit(sentence.at(), {"kind": kind, "words": count, "most": most})
