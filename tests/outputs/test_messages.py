"""Every message that a page asks for is there, in every language with the same placeholders."""

import re
from pathlib import Path
from string import Formatter

import pytest

import guidebuild
from guidebuild.shipped import shipped
from guidebuild.translate.cldr.plural import categories
from guidebuild.translate.messages.catalogue import Message, catalogue, languages

ENGLISH = catalogue("en")
TEMPLATES = [path for theme in shipped("themes").iterdir() for path in theme.glob("*.html")]
CODE = list((Path(guidebuild.__file__).parent / "outputs").rglob("*.py"))
_ASKED = re.compile(r"""\bsay(?:\.plain)?\(\s*["']([a-z0-9.-]+)["']\s*[,)]""")


@pytest.mark.parametrize("path", [*TEMPLATES, *CODE], ids=lambda path: path.name)
def test_every_key_that_is_asked_for_is_there(path: Path) -> None:
    for key in _ASKED.findall(path.read_text(encoding="utf-8")):
        assert key in ENGLISH, key


@pytest.mark.parametrize("language", languages())
def test_plural_forms_are_those_of_the_language(language: str) -> None:
    for key, message in catalogue(language).items():
        if not isinstance(message, str):
            wanted = set(categories(language))
            assert set(message) - {"zero"} <= wanted, key
            assert "other" in message, key
            if language != "en":
                assert set(message) | {"zero"} >= wanted, key


@pytest.mark.parametrize("language", languages())
def test_placeholders_are_those_of_english(language: str) -> None:
    for key, message in catalogue(language).items():
        assert key in ENGLISH, f"{key} is no message"
        assert placeholders(message) <= placeholders(ENGLISH[key]), key


def placeholders(message: Message) -> set[str]:
    """The names in braces, of all forms."""
    forms = [message] if isinstance(message, str) else message.values()
    return {name for form in forms for _, name, _, _ in Formatter().parse(form) if name}
