"""Words that turn a sentence round. Lists are our own; a language without one has no class `negation`."""

import re

_WORDS = {
    "en": r"not|no|never|none|nor|neither|without|cannot|can't|don't|doesn't|won't|mustn't|isn't|aren't|unless",
    "de": r"nicht|kein|keine|keinen|keinem|keiner|nie|niemals|ohne|weder|noch nie|unlösbar",
    "fr": r"ne|n'|pas|jamais|aucun|aucune|sans|ni|rien",
    "es": r"no|nunca|jamás|ningún|ninguna|ninguno|sin|ni|nada",
    "it": r"non|mai|nessun|nessuno|nessuna|senza|né|niente",
    "nl": r"niet|geen|nooit|zonder|noch",
}


def negations(text: str, language: str) -> int | None:
    """How many words of negation a text has, or None where the language has no list."""
    words = _WORDS.get(language.split("-")[0])
    if words is None:
        return None
    return len(re.findall(rf"(?<!\w)(?:{words})(?!\w)", text.replace("’", "'").lower()))
