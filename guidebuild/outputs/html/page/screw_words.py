"""A screw in words: `M2.5×8`, `countersunk head`."""

import re
from decimal import Decimal

from guidebuild.device.screw import Screw
from guidebuild.translate.messages.sayer import Sayer
from guidebuild.translate.messages.text import Text, text

_FIGURE = re.compile(
    r"\d+\.\d+"
)  # the point of `M2.5` goes by the language, that of an inch size has none


def size_words(say: Sayer, screw: Screw) -> Text:
    """Thread and length, kept together: `M2.5×8`."""
    thread = _FIGURE.sub(lambda found: say.number(Decimal(found[0])), screw.thread)
    thread = thread.replace("x", "×")
    length = f"×{say.number(screw.length)}" if screw.length is not None else ""
    return text(f"{thread}{length}")


def head_words(say: Sayer, screw: Screw) -> Text:
    """The head in the reader's language; nothing where the record does not tell it."""
    if screw.head is None:
        return ()
    key = f"head.{screw.head}"
    return say(key) if say.has(key) else text(screw.head)


def drive_words(say: Sayer, drive: str) -> Text:
    """`TX8` as it is; `hex 2.5` in the reader's language."""
    word, _, size = drive.partition(" ")
    key = f"drive.{word}"
    if not say.has(key):
        return text(drive)
    size = _FIGURE.sub(lambda found: say.number(Decimal(found[0])), size).replace("x", "×")
    return text(say.plain(key, size=size).strip().replace(" ", "\u00a0"))


def whole_words(say: Sayer, screw: Screw) -> Text:
    """`M2.5×8 countersunk`, as it stands in lists."""
    return (*size_words(say, screw), *text(" "), *head_words(say, screw))
