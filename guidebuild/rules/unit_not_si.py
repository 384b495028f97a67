"""A quantity is given in a unit that is not the one on the reader's tools.

A torque handle in N·m set to a figure in pound-inches turns the screw with a ninth or nine times of
what was meant. Units of the SI, and the litre, minute, hour, bar, degree and degree Celsius beside
it, are read everywhere.

Source: BIPM, The International System of Units, 9th edition, section 4 (units accepted beside the
SI); from memory.
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from guidebuild.guide.language.spoken import spoken
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)

MESSAGE = "`{quantity}` is not in a unit of the SI"

HELP = "give it in {instead}; the old unit may stand behind it in brackets"

_INSTEAD = {
    "mm": r"inch(?:es)?|in\.|″|feet|ft\.?|thou|mils?",
    "N·m": r"in[-·. ]?lbs?f?|lbf?[-·. ]?in|ft[-·. ]?lbs?f?|lbf?[-·. ]?ft|ozf?[-·. ]?in|kgf[-·. ]?c?m",
    "kg or N": r"lbs?f?\.?|pounds?|ounces?|oz\.?|kgf|kp",
    "kPa or bar": r"psi|inHg|mmHg|torr|atm",
    "°C": r"°\s?F|degrees Fahrenheit",
    "litres or millilitres": r"gal(?:lons?)?|fl\.? ?oz|pints?|quarts?|cups?",
    "W": r"hp|horsepower|BTU(?:/h)?",
}
_FIGURE = re.compile(r"\d")  # without one there is no quantity: nearly every sentence
_PATTERN = re.compile(
    r"\d[\d.,/]*[\s\u00a0-]?(?:"
    + "|".join(f"(?P<u{number}>{units})" for number, units in enumerate(_INSTEAD.values()))
    + r")(?![\w·])"
)


@lru_cache(maxsize=4096)
def _quantities(text: str) -> tuple[re.Match[str], ...]:
    return tuple(_PATTERN.finditer(text)) if _FIGURE.search(text) else ()


def check(proof: Proof) -> Iterator[Hit]:
    for sentence in spoken(proof.guide):
        for found in _quantities(sentence.text):
            if sentence.text[: found.start()].endswith("("):
                continue  # the SI value stands before the bracket
            instead = list(_INSTEAD)[int((found.lastgroup or "u0")[1:])]
            yield Hit(
                sentence.at(found.start(), found.end()), {"quantity": found[0], "instead": instead}
            )
