"""Our own mistakes and Ctrl-C: told in a sentence, and nothing is left half-done."""

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.whole.project import change, copy, environment

RULE = '''"""A rule that falls over."""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category

RULE = Rule(category=Category.TEXT)
MESSAGE = "a"
HELP = "b"


def check(proof):
    {}
    yield
'''
WITH_RULE = """\
import sys
import guidebuild.rules
guidebuild.rules.__path__.append({folder!r})
from guidebuild.cli.main import main
sys.exit(main({words!r}))
"""


@pytest.fixture
def lamp(tmp_path: Path) -> Path:
    return copy("lamp", tmp_path)


def start(project: Path, does: str, *words: str) -> subprocess.Popen[str]:
    """guidebuild with one rule more, which does this."""
    rules = project / "rules"
    rules.mkdir()
    (rules / "falls_over.py").write_text(RULE.format(does))
    code = WITH_RULE.format(folder=str(rules), words=list(words))
    return subprocess.Popen(
        [sys.executable, "-c", code],
        cwd=project,
        env=environment(),
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        start_new_session=True,
        preexec_fn=_as_from_a_terminal,
    )


def _as_from_a_terminal() -> None:
    """A job in the background has Ctrl-C ignored, and hands that on."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)


def guides(project: Path, count: int) -> None:
    """The guide as often as that, so that several processes are used."""
    folder = project / "content" / "guides" / "brill-7"
    text = (folder / "change-lamp.md").read_text(encoding="utf-8")
    for number in range(count):
        (folder / f"again-{number}.md").write_text(text, encoding="utf-8")


@pytest.mark.parametrize("count", [0, 20])
def test_a_rule_that_falls_over_is_named_and_all_others_are_run(lamp: Path, count: int) -> None:
    guides(lamp, count)
    broken = lamp / "content/guides/brill-7/change-lamp.md"
    broken.write_text(
        broken.read_text().replace("refit: shade\ndo-up: shade-screws", "refit: shade")
    )
    done = start(lamp, "raise KeyError('shade')", "check", "--jobs=2")
    out, err = done.communicate(timeout=120)
    assert done.returncode == 3
    said = " ".join(out.split())
    assert said.count("The rule falls-over fell over at guides/brill-7/") == 1
    assert "KeyError: 'shade'" in said
    assert "This is our mistake, not yours." in said
    assert "fastener-not-returned" in out
    assert "Traceback" not in out + err


def test_a_rule_that_can_t_be_loaded_is_named_and_all_others_are_run(lamp: Path) -> None:
    broken = lamp / "content/guides/brill-7/change-lamp.md"
    change(broken, "refit: shade\ndo-up: shade-screws", "refit: shade")
    done = start(lamp, "pass\n\nraise NameError('no such name')\n\ndef more():", "check")
    out, _ = done.communicate(timeout=120)
    assert done.returncode == 3
    assert "The rule falls-over fell over: NameError: no such name" in " ".join(out.split())
    assert "fastener-not-returned" in out


def test_all_of_it_is_told_to_whoever_asks(lamp: Path) -> None:
    done = start(lamp, "raise KeyError('shade')", "check", "--trace")
    out, err = done.communicate(timeout=120)
    assert done.returncode == 3
    assert "Traceback" in err
    assert "Traceback" not in out


def test_a_fault_keeps_the_site_that_stands(lamp: Path) -> None:
    (lamp / "site").mkdir()
    (lamp / "site" / "README.md").write_text("Kept.")
    done = start(lamp, "raise KeyError('shade')", "build")
    done.communicate(timeout=120)
    assert done.returncode == 3
    assert [path.name for path in (lamp / "site").iterdir()] == ["README.md"]


def test_a_process_that_is_killed_is_told_and_not_waited_for(lamp: Path) -> None:
    guides(lamp, 20)
    done = start(lamp, "import os; os.kill(os.getpid(), 9)", "check", "--jobs=2")
    out, err = done.communicate(timeout=60)
    assert done.returncode == 3
    assert "BrokenProcessPool" in err
    assert "Traceback" not in out + err


@pytest.mark.parametrize("count", [0, 20])
@pytest.mark.parametrize("command", ["check", "build"])
def test_ctrl_c_stops_at_once_and_leaves_nothing_behind(
    lamp: Path, command: str, count: int
) -> None:
    guides(lamp, count)
    before = sorted(path.name for path in lamp.iterdir())
    running = lamp / "rules" / "running"
    does = f"open({str(running)!r}, 'w').close(); __import__('time').sleep(60)"
    words = [command, "--report=json=out.json", *(["--jobs=2"] if command == "check" else [])]
    done = start(lamp, does, *words)
    waited = time.monotonic() + 60
    while not running.exists():
        assert done.poll() is None
        assert time.monotonic() < waited
        time.sleep(0.05)
    os.killpg(done.pid, signal.SIGINT)  # a terminal sends it to the whole group
    out, err = done.communicate(timeout=30)
    assert done.returncode == 130
    assert "Stopped. Nothing was left half-written." in err
    assert "Traceback" not in out + err
    assert sorted(path.name for path in lamp.iterdir()) == sorted([*before, "rules"])
    with pytest.raises(ProcessLookupError):
        os.killpg(done.pid, 0)
