"""A guide is light: it is read on old laptops, from slow sticks, and copied to hundreds of them.

The limits are those of the design of the page: with all drawings but without photographs 400 kB, of which script and
style 80 kB.
"""

import re
from collections.abc import Mapping
from functools import cache
from pathlib import Path

import pytest

from guidebuild.build.site_files import site_files
from tests.bench.many_guides import write
from tests.outputs.demo import CONTENT

KB = 1000
WHOLE, SHARED = 400 * KB, 80 * KB
_PHOTOGRAPH = re.compile(r'<figure class="shot">.*?</figure>', re.DOTALL)
LANGUAGES = ("en", "de", "ar")


@cache
def demo() -> Mapping[str, bytes]:
    return site_files(CONTENT).files


def shared(site: Mapping[str, bytes]) -> int:
    """Script and style."""
    return sum(len(site[f"sheet/{name}"]) for name in ("sheet.css", "sheet.js"))


def guides(site: Mapping[str, bytes], language: str) -> dict[str, str]:
    """The sheets of guides in a language."""
    pages = (path for path in site if path.startswith(f"{language}/") and path.endswith(".html"))
    texts = {path: site[path].decode() for path in pages}
    return {path: text for path, text in texts.items() if '<section class="step"' in text}


def weight(text: str) -> int:
    return len(_PHOTOGRAPH.sub("", text).encode())


def test_script_and_style() -> None:
    assert shared(demo()) <= SHARED


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_guide_of_the_demo(language: str) -> None:
    found = guides(demo(), language)
    assert len(found) == 4
    for path, text in found.items():
        assert weight(text) + shared(demo()) <= WHOLE, path


def test_a_guide_of_forty_steps_with_two_forms_of_the_device(tmp_path: Path) -> None:
    """Every step is drawn for both forms: eighty drawings of twenty cards, forty screws and twenty plugs."""
    write(tmp_path, guides=1, steps=40)
    site = site_files(tmp_path).files
    ((_, text),) = guides(site, "en").items()
    assert text.count('<section class="step"') == 40
    assert text.count('<svg class="view"') == 80
    assert weight(text) + shared(site) <= WHOLE


def test_what_drawings_share_stands_once() -> None:
    """Every symbol has one place, and every reference leads to one."""
    for path, text in guides(demo(), "en").items():
        ids = re.findall(r' id="([^"]+)"', text)
        assert len(ids) == len(set(ids)), path
        assert set(re.findall(r'<use href="#([^"]+)"', text)) <= set(ids), path
