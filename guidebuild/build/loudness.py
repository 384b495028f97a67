"""How loud each rule is: by its category, unless the content's settings say otherwise."""

from collections.abc import Iterator

from guidebuild.build import rulebook
from guidebuild.build.tell import finding
from guidebuild.guide.settings import OFF, Settings
from guidebuild.proof.hit import Hit
from guidebuild.source.finding import Category, Finding, Loudness

USUAL = {
    Category.SAFETY: Loudness.ERROR,
    Category.CORRECTNESS: Loudness.ERROR,
    Category.SUSPICIOUS: Loudness.WARNING,
    Category.TEXT: Loudness.WARNING,
    Category.TRANSLATION: Loudness.WARNING,
}


def loudness(settings: Settings, rule: str, category: Category, status: str) -> Loudness | None:
    """How loud the rule is in a guide of this status; None where it is off."""
    level = settings.level(rule, status)
    if level is None:
        return _usual(rule, category)
    return None if level == OFF else Loudness(level)


def _usual(rule: str, category: Category) -> Loudness:
    """Rules about translations say themselves how loud they are: a lost number is no missing sentence."""
    known = category is Category.TRANSLATION and rule in rulebook.names()
    return (rulebook.entry(rule).loudness if known else None) or USUAL[category]


def about_settings(settings: Settings) -> Iterator[Finding]:
    """The rules that the settings name and that do not exist."""
    for name, span in settings.rule_spans.items():
        if name not in rulebook.names():
            near = rulebook.nearest(name)
            do = f"write `{near}`" if near else "take it out; `guidebuild explain` names all rules"
            words = {"key": name, "where": "`rules`, which names rules only", "do": do}
            yield finding(rulebook.entry("unknown-key"), Hit(span, words))
