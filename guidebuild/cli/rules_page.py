"""All rules as one page of HTML that needs nothing beside it."""

from collections.abc import Iterable
from xml.etree.ElementTree import Element, SubElement, tostring

from guidebuild.build.examples import Example, examples
from guidebuild.build.rulebook import card, names
from guidebuild.cli.explaining import SURE, readable
from guidebuild.reports.parts import words
from guidebuild.reports.parts.report import Card
from guidebuild.source.finding import Category

STYLE = """
:root { color-scheme: light dark; --ink: #000; --paper: #fff; --line: #767676; }
@media (prefers-color-scheme: dark) { :root { --ink: #f2f2f2; --paper: #141414; --line: #9a9a9a; } }
body { color: var(--ink); background: var(--paper); margin: 0 auto; padding: 1rem; max-width: 46rem;
  font: 1.05rem/1.5 "Atkinson Hyperlegible", "Liberation Sans", Arial, sans-serif; }
a { color: inherit; }
nav ul { columns: 16rem; padding: 0; list-style: none; }
article { border-top: 1px solid var(--line); margin-top: 2.5rem; }
pre { border: 1px solid var(--line); padding: .75rem; overflow-x: auto; }
h2, h3 { line-height: 1.25; overflow-wrap: anywhere; }
"""


def rules_page() -> str:
    """The page: an index by category, then a piece for each rule."""
    page = Element("html", lang="en")
    head = SubElement(page, "head")
    SubElement(head, "meta", charset="utf-8")
    SubElement(head, "meta", name="viewport", content="width=device-width, initial-scale=1")
    SubElement(head, "title").text = "The rules of guidebuild"
    SubElement(head, "style").text = STYLE
    main = SubElement(SubElement(page, "body"), "main")
    SubElement(main, "h1").text = "The rules of guidebuild"
    cards = [card(name) for name in names()]
    _index(main, cards)
    for each in cards:
        _rule(main, each, *examples(each.name))
    text = tostring(page, encoding="unicode", method="html")
    return f"<!DOCTYPE html>\n{text}\n"


def _index(main: Element, cards: Iterable[Card]) -> None:
    """The names, those of one category together."""
    nav = SubElement(main, "nav", {"aria-label": "All rules"})
    cards = list(cards)
    for category in Category:
        mine = [each for each in cards if each.category is category]
        if mine:
            SubElement(nav, "h2").text = words.sentence(SURE[category])
            listed = SubElement(nav, "ul")
            for each in mine:
                link = SubElement(SubElement(listed, "li"), "a", href=f"#{each.name}")
                link.text = each.name


def _rule(main: Element, rule: Card, bad: Example | None, good: Example | None) -> None:
    piece = SubElement(main, "article", id=rule.name)
    SubElement(piece, "h2").text = rule.name
    for paragraph in (rule.summary, *rule.why.split("\n\n"), *rule.source.split("\n\n")):
        if paragraph:
            SubElement(piece, "p").text = " ".join(paragraph.split())
    said = bad.message if bad and bad.message else readable(rule.message)
    _titled(piece, "It says", "p", words.sentence(said))
    if rule.help and not rule.help.startswith("{"):
        _titled(piece, "What to do", "p", words.sentence(readable(rule.help)))
    if bad:
        _titled(piece, "What it finds", "pre", bad.text)
    if good:
        _titled(piece, "What is right", "pre", good.text)


def _titled(piece: Element, title: str, tag: str, text: str) -> None:
    """A piece of text under a heading; what may be too wide can be scrolled by keys."""
    SubElement(piece, "h3").text = title
    more = {"tabindex": "0"} if tag == "pre" else {}
    SubElement(piece, tag, more).text = text
