"""What each report must say of the sample, kept as a file to read. `python -m tests.reports.golden` writes them anew.

The difference that git then shows is the review.
"""

from collections.abc import Iterator
from importlib import import_module
from pathlib import Path

from guidebuild.reports.parts.look import Look
from guidebuild.reports.parts.report import Report
from tests.reports.sample import CLEAN, FAULTY, REPORT

FOLDER = Path(__file__).parent / "golden"
WIDE, NARROW, ASCII = Look(80), Look(44), Look(72, unicode=False)
COLOUR = Look(80, colour=True)


def cases() -> Iterator[tuple[str, str, Report, Look]]:
    """File name, report, what it is of, and the look."""
    yield "terminal.txt", "terminal", REPORT, WIDE
    yield "terminal-narrow.txt", "terminal", REPORT, NARROW
    yield "terminal-ascii.txt", "terminal", REPORT, ASCII
    yield "terminal-colour.txt", "terminal", REPORT, COLOUR
    yield "terminal-clean.txt", "terminal", CLEAN, WIDE
    yield "terminal-fault.txt", "terminal", FAULTY, WIDE
    yield "plain.txt", "plain", REPORT, WIDE
    yield "plain-fault.txt", "plain", FAULTY, WIDE
    yield "json.json", "json", REPORT, WIDE
    yield "sarif.json", "sarif", REPORT, WIDE
    yield "junit.xml", "junit", REPORT, WIDE
    yield "junit-fault.xml", "junit", FAULTY, WIDE
    yield "workflow-commands.txt", "workflow_commands", REPORT, WIDE
    yield "code-quality.json", "code_quality", REPORT, WIDE


def rendered(name: str, report: Report, look: Look) -> str:
    """A report as text, its escape characters made readable."""
    module = import_module(f"guidebuild.reports.{name}")
    return str(module.render(report, look)).replace("\x1b", "<ESC>")


if __name__ == "__main__":
    for file, name, report, look in cases():
        (FOLDER / file).write_text(rendered(name, report, look), encoding="utf-8")
