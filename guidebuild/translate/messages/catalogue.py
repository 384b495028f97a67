"""A language's messages as a flat table: `act.part.remove` -> a sentence, or its plural forms."""

import tomllib
from collections.abc import Iterator, Mapping
from functools import cache
from importlib import resources
from typing import Any, TypeAlias

from guidebuild.translate.cldr.plural import categories

Message: TypeAlias = str | Mapping[str, str]

FIRST = "en"


@cache
def catalogue(language: str) -> Mapping[str, Message]:
    """The messages of a language tag, or of its shorter form; empty where there is no file."""
    for name in (language, language.partition("-")[0]):
        file = resources.files(__package__).joinpath(f"{name}.toml")
        if file.is_file():
            return dict(_flat("", tomllib.loads(file.read_text(encoding="utf-8")), name))
    return {}


def languages() -> tuple[str, ...]:
    """The languages that have a file, English first."""
    files = resources.files(__package__).iterdir()
    found = sorted(file.name[:-5] for file in files if file.name.endswith(".toml"))
    return (FIRST, *(name for name in found if name != FIRST))


def _flat(prefix: str, table: Mapping[str, Any], language: str) -> Iterator[tuple[str, Message]]:
    for key, value in table.items():
        name = f"{prefix}{key}"
        if isinstance(value, str) or _is_plural(value, language):
            yield name, value
        else:
            yield from _flat(f"{name}.", value, language)


def _is_plural(value: Mapping[str, Any], language: str) -> bool:
    return "other" in value and set(value) <= {*categories(language), "zero"}
