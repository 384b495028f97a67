"""A heading's words as an id."""

import re
import unicodedata
from functools import lru_cache

_PLAIN = re.compile(r"[^a-z0-9]+")


@lru_cache(maxsize=2048)  # the guides of a device have many headings in common
def slug(title: str) -> str:
    """`Remove the plug plate` -> `remove-the-plug-plate`; letters of every script stay, with their marks."""
    text = unicodedata.normalize("NFC", title).lower()
    if text.isascii():
        return _PLAIN.sub("-", text).strip("-")
    kept = (char if unicodedata.category(char)[0] in "LMN" else "-" for char in text)
    return re.sub("-+", "-", "".join(kept)).strip("-")
