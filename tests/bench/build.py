"""What a build costs: 500 guides of 40 steps against MkDocs on as many plain pages, and after one edited line.

Run it: `python -m tests.bench.build [GUIDES] [--mkdocs PATH] [--rounds N]`. CPU seconds of whole processes in one run;
only their ratios mean anything. The plain pages are the same guides' Markdown, their blocks as fenced code. MkDocs, a
general maker of sites, is the measure; it is brought into an environment of its own, which is thrown away, unless
PATH names one.
"""

import argparse
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from statistics import median

from tests.bench.check import cpu, snapshot
from tests.bench.many_guides import write

VERSION = "1.6.1"
KB = 1000
LIMITS = {
    "whole site / MkDocs": 1.0,
    "one line edited / MkDocs": 0.06,
    "largest guide with script and style, kB": 400,
}


def plain_pages(content: Path, folder: Path) -> None:
    """The guides as a plain site: titles as headings, blocks as code."""
    for path in sorted((content / "guides").rglob("*.md")):
        _, front, body = path.read_text(encoding="utf-8").split("---\n", 2)
        title = next(line for line in front.splitlines() if line.startswith("title: "))
        page = folder / "docs" / path.relative_to(content / "guides")
        page.parent.mkdir(parents=True, exist_ok=True)
        page.write_text(f"# {title[7:]}\n\n{body}", encoding="utf-8")
    (folder / "docs" / "index.md").write_text("# Guides\n", encoding="utf-8")
    (folder / "mkdocs.yml").write_text("site_name: Guides\n", encoding="utf-8")


def mkdocs(folder: Path) -> str:
    """A fresh environment with MkDocs in it."""
    subprocess.run((sys.executable, "-m", "venv", folder), check=True)
    quiet = ("--quiet", "--disable-pip-version-check")
    subprocess.run(
        (folder / "bin" / "python", "-m", "pip", "install", *quiet, f"mkdocs=={VERSION}"),
        check=True,
    )
    return str(folder / "bin" / "mkdocs")


def figures(guides: int, command: str | None, rounds: int) -> Iterator[tuple[str, float]]:
    """Everything that is measured, by name; of times the median of a few rounds."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        content, plain, site = folder / "content", folder / "plain", folder / "site"
        content.mkdir()
        write(content, guides)
        plain_pages(content, plain)
        command = command or mkdocs(folder / "mkdocs")
        env = snapshot(folder)
        there = {**env, "PWD": str(plain)}
        build = (sys.executable, "-m", "guidebuild", "build", str(content), "--out", str(site))
        yardstick, whole, edited = [], [], []
        for _ in range(rounds):
            yardstick.append(cpu(command, "build", "--quiet", "--clean", env=there))
            whole.append(cpu(*build, "--no-cache", env=env))
        cpu(*build, env=env)
        for number in range(rounds):
            path = content / "guides" / "rack-0" / f"change-{number}.md"
            path.write_text(path.read_text().replace("dry cloth", "clean dry cloth", 1))
            edited.append(cpu(*build, env=env))
        yield "MkDocs, s", median(yardstick)
        yield "whole site, s", median(whole)
        yield "one line edited, s", median(edited)
        yield "whole site / MkDocs", median(whole) / median(yardstick)
        yield "one line edited / MkDocs", median(edited) / median(yardstick)
        yield "largest guide with script and style, kB", _largest(site) / KB


def _largest(site: Path) -> int:
    shared = sum((site / "sheet" / one).stat().st_size for one in ("sheet.css", "sheet.js"))
    pages = (path.stat().st_size for path in (site / "en").rglob("*.html"))
    return shared + max(pages)


def main() -> None:
    """Measure and print."""
    asked = argparse.ArgumentParser()
    asked.add_argument("guides", nargs="?", type=int, default=500)
    asked.add_argument("--mkdocs", metavar="PATH", help="the program (usual: brought for this run)")
    asked.add_argument(
        "--rounds", type=int, default=3, help="of which the median is told (usual: 3)"
    )
    given = asked.parse_args()
    for name, figure in figures(given.guides, given.mkdocs, given.rounds):
        limit = f" (at most {LIMITS[name]})" if name in LIMITS else ""
        print(f"{name}: {figure:.3f}{limit}")


if __name__ == "__main__":
    main()
