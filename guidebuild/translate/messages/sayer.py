"""Says the tool's messages in one language, with numbers and lists as that language writes them."""

from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from functools import cache, lru_cache
from string import Formatter
from typing import TypeAlias

from guidebuild.device.quantity import Quantity
from guidebuild.translate.cldr.number import write_number
from guidebuild.translate.cldr.plural import plural
from guidebuild.translate.messages.catalogue import FIRST, Message, catalogue
from guidebuild.translate.messages.text import Mark, Piece, Text, joined, plain, text

Word: TypeAlias = str | int | Decimal | Text

RIGHT_TO_LEFT = frozenset({"ar", "fa", "he", "ur", "ps", "sd", "ug", "yi", "dv"})
ANGLES = frozenset("°′″")
MOST_KNOWN = 20_000  # sentences
NARROW = "\u00a0"  # between a number and its unit: never broken


class Sayer:
    """`say("act.fastener.remove", count=4, size=...)` gives the sentence as pieces.

    A key that English lacks, or a placeholder without a word, is a mistake of ours: KeyError.
    """

    def __init__(self, language: str) -> None:
        self.language = language
        self._own = catalogue(language)
        self._first = catalogue(FIRST)
        self._known: dict[tuple[object, ...], Text] = {}  # the same is said in every step

    @property
    def speaks(self) -> bool:
        """Whether there are messages of its own, not only the English ones."""
        return bool(self._own)

    @property
    def name(self) -> str:
        """The language's name in itself; the tag of one that nobody speaks, or that has no messages."""
        known = self.speaks and "-X" not in self.language
        return self.plain("title.language-name") if known else self.language

    @property
    def direction(self) -> str:
        """`rtl` or `ltr`."""
        return "rtl" if self.language.partition("-")[0] in RIGHT_TO_LEFT else "ltr"

    def has(self, key: str) -> bool:
        """Whether there is such a message in any form."""
        return key in self._first

    def __call__(self, key: str, **words: Word) -> Text:
        """The message as pieces; the plural form goes by `count`."""
        asked = (key, *((name, _told(word)) for name, word in words.items()))
        known = self._known.get(asked)
        if known is None:
            if len(self._known) >= MOST_KNOWN:
                self._known.clear()
            known = self._known[asked] = self._said(key, words)
        return known

    def _said(self, key: str, words: Mapping[str, Word]) -> Text:
        message = self._own.get(key) or self._first[key]
        language = self.language if key in self._own else FIRST
        return tuple(self._filled(_form(message, words.get("count"), language), words))

    def forms(self, key: str) -> dict[str, str]:
        """The message with its placeholders, for a script to fill: key -> form, plural forms each by its own."""
        message = self._own.get(key) or self._first[key]
        if isinstance(message, str):
            return {key: message}
        return {f"{key}.{category}": form for category, form in message.items()}

    def keys(self, prefix: str) -> tuple[str, ...]:
        """All keys that begin so, in the order of the English file."""
        return tuple(key for key in self._first if key.startswith(prefix))

    def plain(self, key: str, **words: Word) -> str:
        """The message as a string, for titles and descriptions."""
        return plain(self(key, **words))

    def number(self, value: Decimal | int) -> str:
        """A number with the language's separators."""
        return write_number(Decimal(value), self.language)

    def figure(self, value: float) -> str:
        """The same for a drawing: at most three figures behind the point, no needless zero."""
        return self.number(Decimal(f"{value:.3f}".rstrip("0").rstrip(".")))

    def hole(self, id: str) -> str:
        """A hole's id: `upper-left` is said in words, `a` stays what the drawing shows."""
        key = f"hole.{id}"
        return self.plain(key) if self.has(key) else id

    def quantity(self, value: Decimal, unit: str) -> Text:
        """`0.30 N·m`; a bare count has no unit, and an angle no space (SI brochure 5.4.3)."""
        space = "" if unit in ANGLES or not unit else NARROW
        return text(f"{self.number(value)}{space}{unit}", _Q)

    def said(self, quantity: Quantity) -> Text:
        """A quantity of the author's."""
        return self.quantity(quantity.value, quantity.unit)

    def time(self, seconds: Decimal) -> Text:
        """`5 min`, `90 s`, `1 h 20 min`: the fewest units that lose nothing."""
        whole = int(seconds)
        if seconds != whole or (whole < 120 and whole % 60):
            return self.quantity(seconds.normalize() if seconds != whole else Decimal(whole), "s")
        hours, minutes, rest = whole // 3600, whole // 60 % 60, whole % 60
        parts = ((hours, "h"), (minutes, "min"), (rest, "s"))
        words = [f"{self.number(count)}{NARROW}{unit}" for count, unit in parts if count]
        return text(NARROW.join(words) or f"{self.number(0)}{NARROW}s", _Q)

    def listed(self, items: Sequence[Text], how: str = "and") -> Text:
        """`A, B and C`; `how` is `and`, `or` or `unit`."""
        if len(items) < 2:
            return items[0] if items else ()
        start = joined(items[:-1], plain(self("list.between")))
        return self(f"list.{how}", first=start, last=items[-1])

    def _filled(self, form: str, words: Mapping[str, Word]) -> Iterator[Piece]:
        for literal, name in _parts(form):
            if literal:
                yield Piece(literal)
            if name is not None:
                yield from self._word(words[name])

    def _word(self, word: Word) -> Text:
        match word:
            case str():
                return text(word)
            case tuple():
                return word
            case _:
                return text(self.number(word))


_Q = Mark.QUANTITY


@lru_cache(maxsize=8)
def sayer(language: str) -> Sayer:
    """The one who speaks a language: what was said in one guide is often said in the next."""
    return Sayer(language)


def _told(word: Word) -> Word:
    """A word by which sentences are told apart: 0.3 and 0.30 are equal numbers, and written differently."""
    return str(word) if isinstance(word, Decimal) else word


def _form(message: Message, count: Word | None, language: str) -> str:
    if isinstance(message, str):
        return message
    assert isinstance(count, int | Decimal), "a message with plural forms needs a count"
    if count == 0 and "zero" in message:
        return message["zero"]
    return message.get(plural(count, language)) or message["other"]


@cache
def _parts(form: str) -> tuple[tuple[str, str | None], ...]:
    return tuple((literal, name) for literal, name, _, _ in Formatter().parse(form))
