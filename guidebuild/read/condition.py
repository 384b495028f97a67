"""Conditions: `revision = b and not supplied in (bare, complete)`, with the place of each comparison."""

import re
from typing import NoReturn

from guidebuild.device.condition import Both, Condition, Either, Is, Not
from guidebuild.source.span import Span

_TOKEN = re.compile(r"\s*(?:(!=|[=(),])|([^\s=!(),]+)|(\S))")
_JOINING = frozenset({"and", "or", "not", "in"})
DEEPEST = 50  # brackets inside brackets


class Unreadable(Exception):
    """Caught where the value is read: offsets inside the text, and what is wrong there."""

    def __init__(self, start: int, end: int, words: str) -> None:
        super().__init__(words)
        self.start, self.end, self.words = start, end, words


def parse(text: str, span: Span, offset: int | None) -> Condition:
    """The condition that `text` says. `offset`: where it begins in the file; None: only `span` is known."""
    return _Parser(text, span, offset).whole()


class _Parser:
    """`or` binds least, then `and`, then `not`."""

    def __init__(self, text: str, span: Span, offset: int | None) -> None:
        self.text, self.span, self.offset = text, span, offset
        self.tokens = [
            (found.group().strip(), found.end() - len(found.group().strip()), found.end())
            for found in _TOKEN.finditer(text)
        ]
        self.at = 0
        self.deep = 0

    def whole(self) -> Condition:
        condition = self.either()
        if self.at < len(self.tokens):
            word, start, end = self.tokens[self.at]
            raise Unreadable(start, end, f"`and` or `or` is missing before `{word}`")
        return condition

    def either(self) -> Condition:
        parts = [self.both()]
        while self.next("or"):
            parts.append(self.both())
        return parts[0] if len(parts) == 1 else Either(tuple(parts))

    def both(self) -> Condition:
        parts = [self.negated()]
        while self.next("and"):
            parts.append(self.negated())
        return parts[0] if len(parts) == 1 else Both(tuple(parts))

    def negated(self) -> Condition:
        turns = 0
        while self.next("not"):
            turns += 1
        inner = self.bracketed() if self.next("(") else self.comparison()
        return Not(inner) if turns % 2 else inner

    def bracketed(self) -> Condition:
        self.deep += 1
        if self.deep > DEEPEST:
            raise Unreadable(0, len(self.text), "too many brackets inside each other")
        inner = self.either()
        self.expect(")")
        self.deep -= 1
        return inner

    def comparison(self) -> Condition:
        option, start = self.word("an option")
        if self.next("="):
            value, _ = self.word("a value")
            return Is(option, frozenset({value}), self.place(start))
        if self.next("!="):
            value, _ = self.word("a value")
            return Not(Is(option, frozenset({value}), self.place(start)))
        turned = self.next("not")
        self.expect("in", "`=`, `!=` or `in`")
        self.expect("(")
        values = [self.word("a value")[0]]
        while self.next(","):
            values.append(self.word("a value")[0])
        self.expect(")")
        found = Is(option, frozenset(values), self.place(start))
        return Not(found) if turned else found

    def next(self, word: str) -> bool:
        if self.at < len(self.tokens) and self.tokens[self.at][0] == word:
            self.at += 1
            return True
        return False

    def expect(self, word: str, said: str = "") -> None:
        if not self.next(word):
            self.fail(said or f"`{word}`")

    def word(self, what: str) -> tuple[str, int]:
        if self.at < len(self.tokens):
            word, start, _ = self.tokens[self.at]
            if word not in _JOINING and not re.search(r"[=!(),]", word):
                self.at += 1
                return word, start
        self.fail(what)

    def fail(self, wanted: str) -> NoReturn:
        if self.at >= len(self.tokens):
            raise Unreadable(0, len(self.text), f"{wanted} is missing at its end")
        word, start, end = self.tokens[self.at]
        raise Unreadable(start, end, f"{wanted} is missing before `{word}`")

    def place(self, start: int) -> Span:
        if self.offset is None:
            return self.span
        end = self.tokens[self.at - 1][2]
        return Span(self.span.source, self.offset + start, self.offset + end)
