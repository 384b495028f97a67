"""What is no fresh translation is marked, and told in which language it is."""

from guidebuild.guide.prose import Paragraph, Run
from guidebuild.outputs.html.page.author import Author
from guidebuild.outputs.html.render import behind, show
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source
from guidebuild.translate.catalogue.apply import Shown, Stale

SOURCE = Source("guide.md", "Press for 10 s. Let it dry.")
PRESS, DRY = Span(SOURCE, 0, 15), Span(SOURCE, 16, 27)


def author(shown: Shown) -> Author:
    """The first sentence is stale in this way."""
    return Author({PRESS: Stale(shown, PRESS.text, "5 s drücken.")}, "en", lambda href: None)


def test_a_fresh_sentence_is_plain() -> None:
    assert show(author(Shown.OUTDATED).words(Said("Trocknen lassen.", DRY))) == "Trocknen lassen."


def test_the_source_stands_first_where_the_translation_would_mislead() -> None:
    said = author(Shown.SOURCE_FIRST).words(Said(PRESS.text, PRESS))
    html = str(show(said))
    assert html.index('class="source" lang="en">Press for') < html.index('class="was">5 s drücken.')
    assert behind([said]) == "source"


def test_an_outdated_translation_is_marked() -> None:
    said = author(Shown.OUTDATED).words(Said("5 s drücken.", PRESS))
    assert 'class="behind"' in show(said)
    assert behind([said]) == "behind"


def test_what_is_not_translated_is_told_as_the_source_language() -> None:
    said = author(Shown.MISSING).words(Said("Press it.", PRESS))
    assert show(said) == '<span lang="en">Press it.</span>'
    assert behind([said]) == ""


def test_a_sentence_of_several_runs_is_one_sentence() -> None:
    """Two runs of one stale sentence: the old translation stands once, behind the last."""
    runs = (
        Run("Press ", Span(SOURCE, 0, 6)),
        Run("for 10 s.", Span(SOURCE, 6, 15), frozenset({"strong"})),
    )
    block = author(Shown.SOURCE_FIRST).block(Paragraph(runs, Span(SOURCE, 0, 15)))
    html = str(show(block.text))  # type: ignore[union-attr]
    assert html.count('class="was"') == 1
    assert html.endswith('<span class="was">5 s drücken.</span>')


def test_what_an_author_writes_is_never_markup() -> None:
    said = author(Shown.OUTDATED).words(Said("<b onclick=x>&amp;", DRY))
    assert show(said) == "&lt;b onclick=x&gt;&amp;amp;"
