"""Our own pass over markdown-it's inline rules: it keeps the place of every token.

markdown-it keeps line maps for blocks only. Its inline rules push their tokens in order of the text, so the
place where a token begins is where the state stands when it is pushed; it ends where the next one begins.
"""

from typing import Any, Literal

from markdown_it import MarkdownIt
from markdown_it.parser_inline import ParserInline
from markdown_it.rules_inline import StateInline
from markdown_it.token import Token

from guidebuild.source.address import may_lead

FROM = "from"  # the key of a token's meta that holds its first offset in the inline text


class PlacedState(StateInline):
    """A state that notes where each token begins."""

    def __init__(self, src: str, md: MarkdownIt, env: Any, tokens: list[Token]) -> None:
        super().__init__(src, md, env, tokens)
        self._pending_from = 0
        self._pushed_at = -1
        self._again = 0

    def append_pending(self, text: str) -> None:
        """Text that waits for its token; it began where the state stood first."""
        if not self.pending:
            self._pending_from = self.pos
        super().append_pending(text)

    def pushPending(self) -> Token:  # markdown-it's name
        """The waiting text as a token."""
        token = super().pushPending()
        token.meta[FROM] = self._pending_from
        return token

    def push(self, ttype: str, tag: str, nesting: Literal[-1, 0, 1]) -> Token:
        """A new token; of several signs pushed at once (`**`) each has its own place."""
        token = super().push(ttype, tag, nesting)
        again = self._pushed_at == self.pos and ttype == "text"
        self._again = self._again + 1 if again else 0
        self._pushed_at = self.pos
        token.meta[FROM] = self.pos + self._again
        return token


class PlacedInline(ParserInline):
    """markdown-it's inline parser with our state; text is joined by us, who know the places."""

    def __init__(self) -> None:
        super().__init__()
        self.ruler2.disable(["fragments_join"])

    def parse(self, src: str, md: MarkdownIt, env: Any, tokens: list[Token]) -> list[Token]:
        """Inline tokens of a text, each with its place in `meta`."""
        state = PlacedState(src, md, env, tokens)
        self.tokenize(state)
        for rule in self.ruler2.getRules(""):
            rule(state)
        return state.tokens


def markdown() -> MarkdownIt:
    """CommonMark as it is, with places; a link that may not lead where it wants stays text."""
    parser = MarkdownIt("commonmark", {"html": True})
    parser.inline = PlacedInline()
    parser.validateLink = may_lead  # type: ignore[method-assign,assignment]
    return parser
