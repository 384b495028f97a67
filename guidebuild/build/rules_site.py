"""The page of the rules, in the site's look: what each is about, how it speaks, what it finds and what is right."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from html import escape

from guidebuild.build.examples import examples
from guidebuild.build.rule_words import readable, silenced
from guidebuild.build.rulebook import card, names
from guidebuild.outputs.html.paths import RULES, START
from guidebuild.outputs.html.render import page
from guidebuild.reports.parts.words import sentence
from guidebuild.source.finding import Category


@dataclass(frozen=True, slots=True)
class RuleView:
    """A rule as the page has it; `examples`: (`finds` or `right`, HTML)."""

    name: str
    paragraphs: tuple[str, ...]
    says: str
    do: str
    silence: str
    examples: tuple[tuple[str, str], ...]


@cache
def rules_page(theme: str, language: str, start: str = START) -> Mapping[str, bytes]:
    """Site path -> the page; its rules are in English, what stands round them in `language`."""
    values = {"groups": tuple(_groups()), "root": "", "start": start, "tongues": ()}
    return {RULES: page(theme, language, "rules.html", **values)}


def _groups() -> Iterator[tuple[str, tuple[RuleView, ...]]]:
    for category in Category:
        mine = tuple(_view(name) for name in names() if card(name).category is category)
        if mine:
            yield category.value, mine


def _view(name: str) -> RuleView:
    rule = card(name)
    bad, good = examples(name)
    texts = (rule.summary, *rule.why.split("\n\n"), *rule.source.split("\n\n"))
    said = bad.message if bad and bad.message else readable(rule.message)
    told = rule.help and not rule.help.startswith("{")
    shown = (("finds", bad), ("right", good))
    return RuleView(
        name,
        tuple(" ".join(text.split()) for text in texts if text),
        sentence(said),
        sentence(readable(rule.help)) if told else "",
        silenced(name),
        tuple((key, _lines(one.text)) for key, one in shown if one),
    )


def _lines(text: str) -> str:
    """Each line an element of its own, for paper; escaped at once, as a page has thousands."""
    return "".join(f"<span>{line}</span>" for line in escape(text).splitlines())
