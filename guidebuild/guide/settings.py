"""What holds for a whole content folder: guidebuild.yaml and terms.yaml as values."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from guidebuild.source.said import Said
from guidebuild.source.span import Span

OFF = "off"  # a rule's level; the others are the words of Loudness


@dataclass(frozen=True, slots=True)
class Settings:
    """`rules`: rule -> guide status -> level (`off`, `note`, `warning`, `error`); status `` means any.

    `profile`: whose signal words, `ansi-z535` or `two-level`. `languages`: the first is the authors' own.
    """

    publisher: Said | None = None
    help_line: Said | None = None
    languages: tuple[str, ...] = ("en",)
    theme: str = "sheet"
    rules: Mapping[str, Mapping[str, str]] = field(default_factory=dict)
    profile: str = "ansi-z535"
    rule_spans: Mapping[str, Span] = field(default_factory=dict, compare=False)  # rule -> its name

    def level(self, rule: str, status: str | None) -> str | None:
        """The level that the settings give a rule in a guide of this status, or None."""
        said = self.rules.get(rule, {})
        return said.get(status or "", said.get(""))


@dataclass(frozen=True, slots=True)
class Terms:
    """One language's words. `approved`: word -> what it means here; `forbidden`: word -> what to write."""

    approved: Mapping[str, Said | None] = field(default_factory=dict)
    forbidden: Mapping[str, Said] = field(default_factory=dict)
