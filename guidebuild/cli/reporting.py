"""`--report NAME=FILE`: which reports, where to, and how they may look there."""

import os
import shutil
import sys
from argparse import ArgumentParser
from collections.abc import Iterable
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from guidebuild.build.trouble import Trouble
from guidebuild.build.whole_file import beside

if TYPE_CHECKING:  # heavy, and most commands need no report
    from guidebuild.reports.parts.look import Look
    from guidebuild.reports.parts.report import Report

ROOM = "guidebuild.reports"
USUAL = "terminal"
STDOUT = "-"


class Wanted(NamedTuple):
    """A report by name, and the file that it goes to (`-` for standard output)."""

    name: str
    file: str


def arguments(parser: ArgumentParser) -> None:
    """Add the option to a command."""
    parser.add_argument(
        "--report",
        metavar="NAME=FILE",
        action="append",
        default=[],
        help="write a report into a file, `-` for standard output; may be given several times. "
        f"Names: {', '.join(names())}",
    )


def names() -> list[str]:
    """All reports, by their file names."""
    folder = os.path.join(os.path.dirname(os.path.dirname(__file__)), "reports")
    files = (name for name in os.listdir(folder) if name.endswith(".py") and name[0] != "_")
    return sorted(name.removesuffix(".py").replace("_", "-") for name in files)


def wanted(told: Iterable[str]) -> list[Wanted]:
    """The reports asked for; the terminal's own where nothing else goes to standard output."""
    reports = [one(each) for each in told]
    if not any(report.file == STDOUT for report in reports):
        reports.append(Wanted(USUAL, STDOUT))
    return reports


def one(told: str) -> Wanted:
    """What stands behind one --report."""
    name, _, file = told.partition("=")
    if name not in names():
        from guidebuild.cli.spelling import did_you_mean

        raise Trouble(f"There is no report {name}. {did_you_mean(name, names())}")
    if not file:
        raise Trouble(f"Say where the report goes: --report {name}=FILE, or {name}=- for here.")
    return Wanted(name, file)


def write(reports: Iterable[Wanted], report: "Report") -> None:
    """Render and write each; a file is replaced as a whole or not at all."""
    for name, file in reports:
        render = import_module(f"{ROOM}.{name.replace('-', '_')}").render
        if file == STDOUT:
            print_out(render(report, _look()))
        else:
            replace(file, render(report, _look(paper=True)))


def _look(paper: bool = False) -> "Look":
    """What standard output can show; a file gets no colour and the usual width."""
    from guidebuild.reports.parts.look import Look

    if paper:
        return Look()
    terminal = sys.stdout.isatty()
    colour = terminal and not os.environ.get("NO_COLOR") and os.environ.get("TERM") != "dumb"
    width = max(40, min(shutil.get_terminal_size().columns, 100)) if terminal else 80
    return Look(width, colour, _can_show("┄☐⟦⟧…"))


def _can_show(signs: str) -> bool:
    try:
        signs.encode(sys.stdout.encoding or "ascii")
    except UnicodeEncodeError:
        return False
    return True


def print_out(text: str) -> None:
    """To standard output; what its encoding lacks becomes a question mark, never a crash."""
    encoding = sys.stdout.encoding or "utf-8"
    sys.stdout.write(text.encode(encoding, "replace").decode(encoding))


def replace(name: str, text: str) -> None:
    """Write a file beside its place and put it there, so that no reader meets half of it."""
    file = Path(name)
    data = text.encode("utf-8", "replace")
    try:
        if file.exists() and not file.is_file():  # a pipe, /dev/null: nothing to put in place of
            file.write_bytes(data)
            return
        file = Path(os.path.realpath(file))
        with beside(file, f".{file.name}.{os.getpid()}") as written:
            written.write_bytes(data)
    except OSError as error:
        raise Trouble(f"Can't write {file}: {error.strerror}.") from error
