"""Templates of a theme, filled with view values. Everything is escaped; words carry their marks as elements."""

import re
from collections.abc import Hashable, Iterable
from functools import cache, lru_cache

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from jinja2.runtime import Macro
from markupsafe import Markup, escape

from guidebuild.draw.hatch import patterns_svg
from guidebuild.draw.keys import key_svg
from guidebuild.draw.symbols import alert_svg, cloud_svg, first_angle_svg
from guidebuild.draw.tray import rule_svg
from guidebuild.outputs.html.page.guide import GuideView
from guidebuild.shipped import shipped
from guidebuild.translate.messages.sayer import Sayer, Word, sayer
from guidebuild.translate.messages.text import Age, Mark, Piece, Text, joined, plain

POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data:; "
    "media-src 'self' data:; connect-src 'none'; object-src 'none'; base-uri 'none'; form-action 'none'"
)
_BETWEEN = re.compile(
    r">\n\s*<"
)  # lines of a template end between elements, never inside a sentence
_LEGEND = ("now", "mid", "off", "hatch", "hole", "ring", "order")
_MARKED = frozenset({Age.BEHIND, Age.SOURCE, Age.WAS})
_ELEMENTS = {
    Mark.QUANTITY: ('<bdi class="q">', "</bdi>"),
    Mark.REFERENCE: ('<span class="ref-in">', "</span>"),
    Mark.STRONG: ("<b>", "</b>"),
    Mark.EMPHASIS: ("<em>", "</em>"),
    Mark.CODE: ("<code>", "</code>"),
    Mark.SOFT: ('<span class="soft">', "</span>"),
}


@lru_cache(maxsize=20_000)  # every step says what the one before said
def show(said: Text) -> Markup:
    """Words as HTML."""
    return Markup("".join([_piece(piece) for piece in said]))


def _piece(piece: Piece) -> str:
    if piece.mark is Mark.BREAK:
        return "<br>"
    before, after = _ELEMENTS.get(piece.mark, ("", ""))
    inside = f"{before}{escape(piece.words)!s}{after}"
    if piece.age is not Age.FRESH or piece.language is not None:
        inside = _aged(piece, inside)
    if piece.href is not None:
        return f'<a href="{escape(piece.href)!s}">{inside}</a>'
    return inside


def _aged(piece: Piece, inside: str) -> str:
    """What is no fresh translation is marked, and told in which language it is."""
    kind = f' class="{piece.age.value}"' if piece.age in _MARKED else ""
    language = f' lang="{escape(piece.language)!s}"' if piece.language else ""
    return f"<span{kind}{language}>{inside}</span>"


def behind(blocks: Iterable[Text]) -> str:
    """`source` where a source stands before its outdated translation, `behind` where only that stands, or ``."""
    ages = {piece.age for said in blocks for piece in said}
    return "source" if Age.SOURCE in ages else "behind" if Age.BEHIND in ages else ""


@cache
def environment(theme: str, language: str) -> Environment:
    """The templates of a theme that speak a language."""
    env = Environment(
        loader=FileSystemLoader([shipped("themes") / theme, shipped("themes") / "sheet"]),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
    )
    say = sayer(language)

    labels: dict[str, Markup] = {}

    def said(key: str, **words: Word) -> Markup:
        if words:
            return show(say(key, **words))
        if key not in labels:
            labels[key] = show(say(key))
        return labels[key]

    env.globals |= {
        "say": said,
        "once": _Once(),
        "language": language,
        "language_name": say.name,
        "speaks": say.speaks,
        "direction": say.direction,
        "script_words": tuple(form for key in _SCRIPTED for form in say.forms(key).items()),
        "comma": say.plain("list.between"),
        "scripted": (shipped("themes") / theme / "script").is_dir(),
        "policy": Markup(POLICY),
        "alert": Markup(alert_svg()),
        "cloud": Markup(cloud_svg()),
        "patterns": Markup(patterns_svg()),
        "tray_rule": Markup(rule_svg(say.plain("tray.rule"))),
        "first_angle": Markup(first_angle_svg(say.plain("title.projection"))),
        "legend": tuple((kind, key_svg(kind)) for kind in _LEGEND),
    }
    env.filters |= {
        "show": show,
        "plain": plain,
        "behind": behind,
        "references": lambda marks: _references(say, marks),
        "step_link": lambda step: _step_link(say, step),
        "remedy_links": lambda guide: _remedy_links(say, guide),
        "code": _code,
        "status": lambda word: _status(say, word),
    }
    return env


class _Once:
    """`once(macro, ...)` in a template: what a macro makes of the same values is made once and kept."""

    def __init__(self) -> None:
        self._made: dict[tuple[object, ...], Markup] = {}

    def __call__(self, macro: Macro, *values: Hashable) -> Markup:
        asked = (macro.name, *values)
        made = self._made.get(asked)
        if made is None:
            if len(self._made) >= _MOST_MADE:
                self._made.clear()
            made = self._made[asked] = Markup(macro(*values))
        return made


_MOST_MADE = 20_000
_SCRIPTED = [
    "check.inside",
    "check.outside",
    "wait.start",
    "wait.stop",
    "wait.again",
    "wait.done",
    "record.wrong",
    "record.loaded",
    "record.other-issue",
    "record.clear-sure",
    "left.coming",
    "left.open",
    "left.only",
    "bench.back",
    "bench.next",
    "bench.back-step",
    "bench.next-step",
    "bench.next-end",
    "bench.of",
    "bench.screws",
    "start.found",
]  # the messages that the script may have to say


def page(theme: str, language: str, template: str, **values: object) -> bytes:
    """A whole file."""
    whole = environment(theme, language).get_template(template).render(**values)
    return _BETWEEN.sub("><", whole).encode()


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
    return joined(links, say.plain("list.between"))


def _code(code: str) -> Markup:
    """A step's address, which may break after a stroke."""
    unbroken = Markup('<span class="nw">{}</span>')  # else it may break after a hyphen
    parts = (unbroken.format(part) if "-" in part else escape(part) for part in code.split("/"))
    return Markup("/<wbr>").join(parts)


def _status(say: Sayer, word: str) -> str:
    key = f"status.{word}"
    return say.plain(key) if word and say.has(key) else word
