"""Templates of a theme, filled with view values. Everything is escaped; words carry their marks as elements."""

from collections.abc import Iterable
from functools import cache

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup, escape

from guidebuild.draw.hatch import patterns_svg
from guidebuild.draw.keys import key_svg
from guidebuild.draw.symbols import alert_svg, first_angle_svg
from guidebuild.outputs.html.page.guide import GuideView
from guidebuild.shipped import shipped
from guidebuild.translate.messages.sayer import Sayer, Word
from guidebuild.translate.messages.text import Mark, Piece, Text, joined, plain

POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data:; "
    "media-src 'self' data:; connect-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'"
)
_LEGEND = ("now", "mid", "off", "hatch", "hole", "ring", "order")
_ELEMENTS = {
    Mark.QUANTITY: ('<bdi class="q">', "</bdi>"),
    Mark.REFERENCE: ('<span class="ref-in">', "</span>"),
    Mark.STRONG: ("<b>", "</b>"),
    Mark.EMPHASIS: ("<em>", "</em>"),
    Mark.CODE: ("<code>", "</code>"),
    Mark.SOFT: ('<span class="soft">', "</span>"),
}


def show(said: Text) -> Markup:
    """Words as HTML."""
    return Markup("").join(_piece(piece) for piece in said)


def _piece(piece: Piece) -> Markup:
    if piece.mark is Mark.BREAK:
        return Markup("<br>")
    before, after = _ELEMENTS.get(piece.mark, ("", ""))
    inside = Markup(before) + escape(piece.words) + Markup(after)
    if piece.language is not None:
        inside = Markup('<span lang="{}">{}</span>').format(piece.language, inside)
    if piece.href is not None:
        return Markup('<a href="{}">{}</a>').format(piece.href, inside)
    return inside


@cache
def environment(theme: str, language: str) -> Environment:
    """The templates of a theme that speak a language."""
    env = Environment(
        loader=FileSystemLoader(shipped("themes") / theme),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
    )
    say = Sayer(language)

    def said(key: str, **words: Word) -> Markup:
        return show(say(key, **words))

    env.globals |= {
        "say": said,
        "language": language,
        "direction": say.direction,
        "script_words": tuple(form for key in _scripted(say) for form in say.forms(key).items()),
        "policy": Markup(POLICY),
        "alert": Markup(alert_svg()),
        "patterns": Markup(patterns_svg()),
        "first_angle": Markup(first_angle_svg(say.plain("title.projection"))),
        "legend": tuple((kind, key_svg(kind)) for kind in _LEGEND),
    }
    env.filters |= {
        "show": show,
        "plain": plain,
        "references": lambda marks: _references(say, marks),
        "step_link": lambda step: _step_link(say, step),
        "remedy_links": lambda guide: _remedy_links(say, guide),
        "code": _code,
        "status": lambda word: _status(say, word),
    }
    return env


def _scripted(say: Sayer) -> Iterable[str]:
    """The messages that the script may have to say."""
    for prefix in (
        "check.inside",
        "check.outside",
        "wait.",
        "record.",
        "left.",
        "bench.",
        "start.found",
    ):
        yield from say.keys(prefix)


def page(theme: str, language: str, template: str, **values: object) -> bytes:
    """A whole file."""
    return environment(theme, language).get_template(template).render(**values).encode()


def _references(say: Sayer, marks: Iterable[str]) -> Text:
    return joined([(Piece(mark, Mark.REFERENCE),) for mark in marks], " ")


def _step_link(say: Sayer, step: tuple[str, str]) -> Text:
    return (Piece(say.plain("step.link", number=step[1]), href=f"#{step[0]}"),)


def _remedy_links(say: Sayer, guide: GuideView) -> Text:
    """`R1 Discharge by hand, R2 …`."""
    links: list[Text] = [
        (Piece(f"{step.number} {plain(step.title)}", href=f"#{step.id}"),)
        for stage in guide.remedies
        for step in stage.steps
    ]
    return joined(links, ", ")


def _code(code: str) -> Markup:
    """A step's address, which may break after a stroke."""
    parts = (Markup('<span class="nw">{}</span>').format(part) for part in code.split("/"))
    return Markup("/<wbr>").join(parts)


def _status(say: Sayer, word: str) -> str:
    key = f"status.{word}"
    return say.plain(key) if word and say.has(key) else word
