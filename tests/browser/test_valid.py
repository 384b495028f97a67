"""Every page is valid HTML by the Nu checker, and its style sheet valid CSS."""

import subprocess
from pathlib import Path

from tests.browser.checkers import VNU, needs_checker
from tests.browser.site import Site

pytestmark = needs_checker(VNU, "java")

# Current CSS that the pinned checker does not know: container queries (CSS Containment 3), `vector-effect` (SVG 2)
_NEWER = ("Property “container", "at-rule “@container", "Property “vector-effect”")


def _said(*files: Path) -> list[str]:
    command = ["java", "-jar", str(VNU), "--format", "gnu", "--also-check-css"]
    told = subprocess.run([*command, *map(str, files)], capture_output=True, text=True, check=False)
    lines = told.stderr.splitlines()
    errors = [line for line in lines if ": error: " in line]
    return [line for line in errors if not any(newer in line for newer in _NEWER)]


def test_no_error(sites: dict[str, Site]) -> None:
    """All pages and style sheets of all themes."""
    files = [page for site in sites.values() for page in site.html]
    files += [style for site in sites.values() for style in site.folder.rglob("*.css")]
    assert _said(*files) == []


def test_it_finds_an_error(tmp_path: Path) -> None:
    """The canary: an unclosed heading is told."""
    page = tmp_path / "bad.html"
    page.write_text("<!DOCTYPE html><html lang=en><title>x</title><h1>y", encoding="utf-8")
    assert any("h1" in line for line in _said(page))
