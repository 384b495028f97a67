"""The command line's outside: help, names, wrong use, and how light it starts."""

import re
import subprocess
import sys
from pathlib import Path

import pytest

from guidebuild.cli.main import main
from guidebuild.cli.progress import Bar
from guidebuild.cli.spelling import did_you_mean

ROOT = Path(__file__).resolve().parents[2]
HEAVY = {"markdown_it", "yaml", "jsonschema", "PIL", "jinja2", "multiprocessing", "decimal", "json"}


def run(*words: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "guidebuild", *words]
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)


def test_help_names_every_command_with_a_line_of_its_own() -> None:
    shown = run("--help").stdout
    files = (ROOT / "guidebuild" / "cli" / "commands").glob("[a-z]*.py")
    for command in (path.stem.replace("_", "-") for path in files):
        assert re.search(rf"^    {command}\b", shown, re.MULTILINE)


def test_the_version_is_the_package_s() -> None:
    from guidebuild import __version__

    assert run("--version").stdout == f"guidebuild {__version__}\n"


def test_help_loads_nothing_heavy() -> None:
    look = "import sys; from guidebuild.cli.main import main\ntry: main(['--help'])\nexcept SystemExit: pass\n"
    shown = subprocess.run(
        [sys.executable, "-c", look + "print(*sorted(sys.modules))"],
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    assert not HEAVY & set(shown.splitlines()[-1].split())


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["chek"], "there is no command chek. Did you mean check?"),
        (["explain", "fastener-not-retuned"], "Did you mean fastener-not-returned"),
        (["check", "no-such-folder"], "There is no file or folder no-such-folder."),
        (["check", "--report", "jsn=out"], "There is no report jsn. Did you mean json?"),
        (["check", "--report", "json"], "Say where the report goes: --report json=FILE"),
        (["check", "guidebuild"], "guidebuild is no content folder and lies in none."),
    ],
)
def test_wrong_use_is_told_in_a_sentence(
    words: list[str], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(words) == 2
    told = capsys.readouterr()
    assert said in told.err
    assert "Traceback" not in told.err
    assert told.out == ""


def test_an_unknown_option_is_wrong_use_too() -> None:
    assert run("check", "--no-such-option").returncode == 2


def test_no_command_at_all_is_wrong_use() -> None:
    assert run().returncode == 2


def test_a_word_like_nothing_gets_the_whole_list() -> None:
    assert did_you_mean("zzz", ["check", "build"]) == "There are: check, build."


class Screen:
    """A terminal, or a file that is none."""

    def __init__(self, terminal: bool) -> None:
        self.terminal, self.text = terminal, ""

    def isatty(self) -> bool:
        return self.terminal

    def write(self, text: str) -> int:
        self.text += text
        return len(text)

    def flush(self) -> None:
        pass


def test_a_bar_shows_on_a_terminal_and_wipes_itself_off() -> None:
    screen = Screen(terminal=True)
    bar = Bar("Checking", screen, patience=0)
    bar(5, 10)
    assert "Checking [===============               ] 5 of 10" in screen.text
    bar.close()
    assert screen.text.endswith("\r\x1b[K")


def test_elsewhere_there_is_no_bar() -> None:
    screen = Screen(terminal=False)
    bar = Bar("Checking", screen, patience=0)
    bar(5, 10)
    bar.close()
    assert screen.text == ""
