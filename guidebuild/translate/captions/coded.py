"""The tags inside a caption as numbered codes, as in any other sentence, and back."""

import re
from collections.abc import Sequence
from html import escape, unescape

from guidebuild.source.span import Span
from guidebuild.translate.segments.codes import Code, Coded, decoded, escaped

_TOKEN = re.compile(r"<([^>]*)>|([^<]+)")
_CODE = re.compile(r"<(/?)(\d+)>")
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
    if decoded(text, codes, span) is None:
        return None
    pieces = _CODE.split(text)  # text, stroke, number, text, stroke, number, ...
    said = [_shown(pieces[0])]
    for stroke, number, plain in zip(pieces[1::3], pieces[2::3], pieces[3::3], strict=True):
        (tag,) = codes[int(number) - 1].marks
        name = _NAME.match(tag)
        said += [f"</{name[1] if name else tag}>" if stroke else f"<{tag}>", _shown(plain)]
    return "".join(said)


def _shown(plain: str) -> str:
    return escape(plain.replace("&lt;", "<").replace("&amp;", "&"), quote=False)
