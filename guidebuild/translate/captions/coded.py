"""The tags inside a caption as numbered codes, as in any other sentence, and back."""

import re
from collections.abc import Sequence
from html import escape, unescape

from guidebuild.guide.prose import Run
from guidebuild.source.span import Span
from guidebuild.translate.segments.codes import Code, Coded, decoded, escaped

_TOKEN = re.compile(r"<([^>]*)>|([^<]+)")
_NAME = re.compile(r"/?([a-z]+)")


def coded_cue(text: str) -> Coded:
    """A caption as a translator gets it; a tag that is never closed ends with the text, times inside are left out."""
    said: list[str] = []
    codes: list[Code] = []
    open_: list[int] = []
    for tag, plain in _TOKEN.findall(text):
        if plain:
            said.append(escaped(unescape(plain)))
        elif tag.startswith("/"):
            if open_:
                said.append(f"</{open_.pop()}>")
        elif _NAME.match(tag):
            codes.append(Code(frozenset({tag}), None))
            open_.append(len(codes))
            said.append(f"<{len(codes)}>")
    said += [f"</{number}>" for number in reversed(open_)]
    return Coded("".join(said), tuple(codes))


def cue_text(text: str, codes: Sequence[Code], span: Span) -> str | None:
    """A translation as the text of a caption; None where its codes are lost or crossed."""
    runs = decoded(text, codes, span)
    return None if runs is None else "".join(_marked(run, codes) for run in runs)


def _marked(run: Run, codes: Sequence[Code]) -> str:
    """The run in its tags, the outermost first: the order in which they stand in the source."""
    said = escape(run.text, quote=False)
    tags = dict.fromkeys(tag for code in codes for tag in code.marks if tag in run.marks)
    for tag in reversed(list(tags)):
        name = _NAME.match(tag)
        said = f"<{tag}>{said}</{name[1]}>" if name else said
    return said
