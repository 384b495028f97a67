"""Words that turn a sentence round. Lists are our own; a language without one has no class `negation`."""

import re
import unicodedata

_WORDS = {
    "en": r"not|no|never|none|nor|neither|without|cannot|can't|don't|doesn't|won't|mustn't|isn't|aren't|unless",
    "de": r"nicht|kein|keine|keinen|keinem|keiner|nie|niemals|ohne|weder|noch nie|unlösbar",
    "fr": r"ne|n'|pas|jamais|aucun|aucune|sans|ni|rien",
    "es": r"no|nunca|jamás|ningún|ninguna|ninguno|sin|ni|nada",
    "it": r"non|mai|nessun|nessuno|nessuna|senza|né|niente",
    "nl": r"niet|geen|nooit|zonder|noch",
}
# By what else a translation may say it: `without` as `free of`, `unless` as `only if`, `do not` as `avoid`.
_OTHER_WAYS = {
    "de": (
        r"nein|nichts|keines|kaum|außer\w*|statt\w*|nur|\w*(?:frei|los)\w*|un(?!d\b|ter|ten|s)\w+"
        r"|vermeid\w*|verboten|verbiete\w*|unterlass\w*|es sei denn"
    ),
    "fr": r"non|nul\w*|sauf|hors|évit\w*|interdi\w*|seulement|défense|exempt\w*",
    "es": r"salvo|excepto|evit\w*|prohib\w*|solo|sólo|tampoco|libre\w*",
    "it": r"no|salvo|tranne|evit\w*|viet\w*|solo|priv\w*",
    "nl": r"nee|behalve|vermijd\w*|verboden|alleen|\w+loos|\w+vrij",
    "ar": (
        r"[وف]?(?:لا|لم|لن|ليس|ليست|دون|بدون|بلا|غير|عدم|ممنوع|يمنع|إلا|أبدا|خال|خالية|تجنب|فقط"
        r"|احذر|لئلا|كيلا)"
    ),
}
_WITHIN = {
    "ja": r"いいえ|ない|なく|なけれ|ません|ずに|なし|禁止|避け|以外|不|未|無|だけ"
}  # no spaces part words


def negations(text: str, language: str) -> int | None:
    """How many words of negation a text has, or None where the language has no list."""
    words = _WORDS.get(language.split("-")[0])
    if words is None:
        return None
    return len(re.findall(rf"(?<!\w)(?:{words})(?!\w)", text.replace("’", "'").lower()))


def may_deny(text: str, language: str) -> bool:
    """Whether a translation says a negation in any way that we know; true where the language has no list."""
    short = language.split("-")[0]
    bare = "".join(one for one in text.lower() if unicodedata.category(one) != "Mn")
    if short in _WITHIN:
        return re.search(_WITHIN[short], bare) is not None
    lists = [lists[short] for lists in (_WORDS, _OTHER_WAYS) if short in lists]
    if not lists:
        return True
    words = "|".join(lists)
    elided = r"|(?<!\w)n'" if short == "fr" else ""  # it leans on the word behind it
    return re.search(rf"(?<!\w)(?:{words})(?!\w){elided}", bare.replace("’", "'")) is not None
