"""A rule's card as text for a terminal."""

from collections.abc import Iterator

from guidebuild.build.examples import Example, examples
from guidebuild.build.rule_words import readable, silenced
from guidebuild.build.rulebook import card
from guidebuild.reports.parts import words
from guidebuild.reports.parts.report import Card
from guidebuild.reports.parts.wrap import wrap
from guidebuild.source.finding import Category

WIDTH = 80
SURE = {
    Category.SAFETY: "safety: it speaks only when it is certain, and somebody could be hurt",
    Category.CORRECTNESS: "correctness: it speaks only when it is certain",
    Category.SUSPICIOUS: "suspicious: it may be wrong; look, and allow it where it is",
    Category.TEXT: "text: style",
    Category.TRANSLATION: "translation: catalogues and captions",
}


def explained(name: str) -> str:
    """All that is known of a rule, with a bad and a good example."""
    return "\n\n".join(_sections(card(name), *examples(name)))


def _sections(rule: Card, bad: Example | None, good: Example | None) -> Iterator[str]:
    yield f"{rule.name}\n{_indented(SURE[rule.category])}"
    for paragraph in (rule.summary, *rule.why.split("\n\n"), *rule.source.split("\n\n")):
        if paragraph:
            yield "\n".join(wrap(paragraph, WIDTH))
    said = bad.message if bad and bad.message else readable(rule.message)
    yield f"It says\n{_indented(words.sentence(said))}"
    if rule.help and not rule.help.startswith("{"):
        yield f"What to do\n{_indented(words.sentence(readable(rule.help)))}"
    if bad:
        yield f"An example of what it finds\n\n{_quoted(bad)}"
    if good:
        yield f"An example of what is right\n\n{_quoted(good)}"
    yield f"To silence it in one place\n    {silenced(rule.name)}"


def _indented(text: str) -> str:
    return "\n".join(f"    {line}" for line in wrap(text, WIDTH - 4))


def _quoted(example: Example) -> str:
    """The example's own lines; its line breaks are part of it."""
    return "\n".join(f"    {line}".rstrip() for line in example.text.splitlines())
