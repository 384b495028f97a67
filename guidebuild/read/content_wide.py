"""guidebuild.yaml, tools.yaml and terms.yaml as values."""

from guidebuild.device.tool import Tool
from guidebuild.guide.settings import Settings, Terms
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said

_DEFAULT = Settings()


def settings(entry: Entry | None) -> Settings:
    """The settings; what is not said has its default."""
    if entry is None:
        return _DEFAULT
    theme, profile, rules = entry.said("theme"), entry.said("profile"), entry.entry("rules")
    return Settings(
        publisher=entry.said("publisher"),
        help_line=entry.said("help-line"),
        languages=tuple(one.text for one in entry.all_said("languages")) or _DEFAULT.languages,
        theme=theme.text if theme else _DEFAULT.theme,
        rules={rule: _levels(said) for rule, said in entry.entries("rules").items()},
        profile=profile.text if profile else _DEFAULT.profile,
        rule_spans={rule.text: rule.span for rule, _ in rules.each()} if rules else {},
    )


def _levels(said: Said | Entry) -> dict[str, str]:
    if isinstance(said, Entry):
        return {status: level.text for status, level in said.values.items()}
    return {"": said.text}


def tools(entry: Entry | None) -> dict[str, Tool]:
    """Tools and materials by id."""
    if entry is None:
        return {}
    return {id_.text: _tool(id_, one) for id_, one in entry.each()}


def _tool(id_: Said, entry: Entry) -> Tool:
    kind = entry.said("kind")
    return Tool(
        id=id_.text,
        name=entry.said("name") or id_,
        span=id_.span,
        material=kind is not None and kind.text == "material",
        fits=entry.all_said("fits"),
        size=entry.said("size"),
        basic=entry.get("basic", False),
    )


def terms(entry: Entry | None) -> dict[str, Terms]:
    """Each language's words."""
    if entry is None:
        return {}
    return {language: _words(one) for language, one in entry.values.items()}


def _words(entry: Entry) -> Terms:
    approved = {word: one.said("for") for word, one in entry.entries("approved").items()}
    return Terms(approved, entry.entries("forbidden"))
