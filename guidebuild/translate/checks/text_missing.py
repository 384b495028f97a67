"""A sentence, or a whole file, has no translation.

The page shows the source's words there, marked as what they are. A guide without any catalogue has no page in that
language at all.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category, Loudness
from guidebuild.translate.catalogue.pair import Pair, Slip

RULE = Rule(category=Category.TRANSLATION, loudness=Loudness.NOTE)

MESSAGE = "{what} not translated into `{language}`"

HELP = "{do}"

MOST = 40
IN_ITS_CATALOGUE = "translate it in its catalogue; until then the page shows the source"
TAKE_OUT = "give it to a translator: `guidebuild translate take-out --to {language}`"


def check_pair(pair: Pair) -> Iterator[Slip]:
    if not pair.text:
        text = pair.segment.text
        short = text if len(text) <= MOST else f"{text[: MOST - 1]}…"
        words = {"what": f"`{short}` is", "language": pair.language, "do": IN_ITS_CATALOGUE}
        yield Slip(0, 0, words)


def of_many(count: int, of: int, language: str) -> dict[str, object]:
    """The words for a catalogue in which so many texts are missing that one finding is enough."""
    return {"what": f"{count} of {of} texts are", "language": language, "do": IN_ITS_CATALOGUE}


def of_all(what: str, language: str) -> dict[str, object]:
    """The words for a file, or a content folder, that has no catalogue in a language."""
    return {"what": f"{what} is", "language": language, "do": TAKE_OUT.format(language=language)}
