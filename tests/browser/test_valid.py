"""Every page is valid HTML by the Nu checker, and its style sheet valid CSS."""

from pathlib import Path

from tests.browser.checkers import VNU, errors_in, needs_checker
from tests.browser.site import Site

pytestmark = needs_checker(VNU, "java")


def test_no_error(sites: dict[str, Site]) -> None:
    """All pages and style sheets of all themes."""
    files = [page for site in sites.values() for page in site.html]
    files += [style for site in sites.values() for style in site.folder.rglob("*.css")]
    assert errors_in(*files) == []


def test_no_error_in_any_language(world: Site) -> None:
    """Pages whose words are not those of the lines round them: part translated, lengthened, from right to left."""
    assert errors_in(*(page for page in world.html if page.parent.name != "alder-v3")) == []


def test_it_finds_an_error(tmp_path: Path) -> None:
    """The canary: an unclosed heading is told."""
    page = tmp_path / "bad.html"
    page.write_text("<!DOCTYPE html><html lang=en><title>x</title><h1>y", encoding="utf-8")
    assert any("h1" in line for line in errors_in(page))
