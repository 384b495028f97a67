"""Signal words: how grave each is, and which a convention uses for injury and which for damage.

Two public conventions do not agree. ANSI Z535.6 (and of injuries ISO 3864-2) says danger, warning or caution of
an injury by how grave it is, and notice of damage. The other (STE, S1000D, US military and energy documents) has
two levels: a warning is any injury, a caution is damage. Source: both as restated in public notes.
"""

import re

LEVELS = ("danger", "warning", "caution", "notice")  # the gravest first
TWO_LEVELS = "two-level"

# Outcomes that a sentence speaks of; in prose these words are all that can be looked for.
_INJURY = re.compile(
    r"\b(?:injur\w*|death|die|dies|kill\w*|wound\w*|electric shocks?|electrocut\w*|blind\w*"
    r"|poison\w*|toxic|suffocat\w*|amputat\w*"
    r"|(?:burn|cut|scald|pinch|crush|shock|hurt|trap)s? (?:you|your|people|fingers|hands|skin))\b",
    re.IGNORECASE,
)
_DAMAGE = re.compile(
    r"\b(?:damag\w*|breaks?|broken|cracks?|cracked|scratch\w*|tears?|torn|bends?|bent|strips?"
    r"|stripped|creas\w*|fails?|failure|ruin\w*|lost|loses?)\b",
    re.IGNORECASE,
)


def gravity(level: str) -> int:
    """0 for danger, 3 for notice; a level that is none of ours is taken for the least."""
    return LEVELS.index(level) if level in LEVELS else len(LEVELS)


def speaks_of_injury(text: str) -> bool:
    """Whether English words of a safety message tell of an injury."""
    return bool(_INJURY.search(text))


def speaks_of_damage(text: str) -> bool:
    """Whether English words of a safety message tell of damage to things or data."""
    return bool(_DAMAGE.search(text))


def words_for_injury(profile: str) -> tuple[str, ...]:
    """The signal words that a convention has for a risk of injury."""
    return ("danger", "warning") if profile == TWO_LEVELS else LEVELS[:3]


def words_for_damage(profile: str) -> tuple[str, ...]:
    """The signal words that a convention has for damage to things only."""
    return ("caution", "notice") if profile == TWO_LEVELS else ("notice",)
