"""As a translator would: take out, edit in a plain editor, bring back, with mistakes planted and mended."""

import json
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from guidebuild.translate.po.reader import read_po
from guidebuild.translate.po.writer import write_po
from tests import needs

CONTENT = Path(__file__).resolve().parents[2] / "content"
HEAD = "translations/de/guides/larch-p2/replace-the-battery.po"


@pytest.fixture
def content(tmp_path: Path) -> Path:
    skip = shutil.ignore_patterns("translations")
    return Path(shutil.copytree(CONTENT, tmp_path / "content", ignore=skip))


def translate(content: Path, *words: str) -> tuple[int, str]:
    command = [sys.executable, "-m", "guidebuild", "translate", *words, "--content", str(content)]
    done = subprocess.run(command, capture_output=True, text=True, cwd=content.parent)
    assert "Traceback" not in done.stderr
    return done.returncode, done.stdout + done.stderr


def filled(path: Path) -> str:
    """A catalogue in which each text is translated by itself, turned to capitals but for its codes."""
    catalogue, _ = read_po(path.read_text(encoding="utf-8"))
    text = write_po(catalogue)
    return re.sub(
        r'^msgid "(.+)"\nmsgstr ""$',
        lambda found: f'msgid "{found[1]}"\nmsgstr "{found[1]}"',
        text,
        flags=re.MULTILINE,
    )


def test_taken_out_filled_in_and_brought_back(content: Path) -> None:
    assert translate(content, "take-out", "--to", "de")[0] == 0
    returned = content.parent / "replace-the-battery.po"
    returned.write_text(filled(content / HEAD), encoding="utf-8")
    code, said = translate(content, "bring-back", str(returned))
    assert code == 0, said
    assert re.search(r"in de: \d+ taken\.$", said.strip())
    assert " 0 texts" not in translate(content, "take-out", "--to", "de")[1]
    status = translate(content, "status")[1]
    line = next(
        one for one in status.splitlines() if "replace-the-battery.md" in one and one[:2] == "de"
    )
    assert line.split()[2:5] == ["0", "0", "0"]
    assert re.search(r"(?m)^de .* all of it$", status)


def test_what_is_not_translated_yet_is_missing_and_no_mistake(content: Path) -> None:
    """An empty catalogue has lost no number and no negation: it is only not filled in."""
    translate(content, "take-out", "--to", "de")
    command = [sys.executable, "-m", "guidebuild", "check", str(content), "--report", "json=-"]
    said = subprocess.run(command, capture_output=True, text=True, check=False).stdout
    told = json.loads(said)["findings"]
    assert {one["rule"] for one in told} == {"text-missing"}
    assert "number-changed" not in said


def test_three_planted_mistakes_are_told_at_their_place_and_nothing_is_taken(content: Path) -> None:
    translate(content, "take-out", "--to", "de")
    before = (content / HEAD).read_text(encoding="utf-8")
    text = filled(content / HEAD)
    text = text.replace(
        'msgstr "For a Larch P2 that runs less than 2 h',
        'msgstr "For a Larch P2 that runs less than 20 h',
    )
    text = text.replace('msgstr "Hand the old pack', 'msgstr "Hand the <1>old</1> pack')
    text = text.replace('msgstr "Charge the new pack', 'msgstr "WARNUNG: Charge the new pack')
    returned = content.parent / "replace-the-battery.po"
    returned.write_text(text, encoding="utf-8")
    code, said = translate(content, "bring-back", str(returned))
    assert code == 1
    for rule in ("number-changed", "placeholder-lost", "signal-word-translated-by-hand"):
        assert rule in said
    assert "refused" in said
    assert (content / HEAD).read_text(encoding="utf-8") == before


@pytest.mark.parametrize("form", ["xliff", "xliff-1.2"])
def test_an_exchange_file_goes_out_and_comes_back(content: Path, form: str) -> None:
    translate(
        content, "take-out", "--to", "de", "--format", form, "--out", str(content.parent / "agency")
    )
    path = content.parent / "agency/de/guides/larch-p2/replace-the-battery.xlf"
    text = path.read_text(encoding="utf-8")
    text = re.sub(r"(<source>(.*?)</source>)", r"\1<target>\2</target>", text)
    path.write_text(text.replace('state="initial"', 'state="translated"'), encoding="utf-8")
    code, said = translate(content, "bring-back", str(path))
    assert code == 0, said
    assert re.search(r"[1-9]\d* taken", said)


def test_a_file_that_is_none_of_ours_is_refused(content: Path) -> None:
    for name, text in (("a.po", 'msgid "a"\nmsgstr "b"\n'), ("a.xlf", "<xliff>"), ("a.po", "what")):
        (content.parent / name).write_text(text)
        code, said = translate(content, "bring-back", str(content.parent / name))
        assert code == 1
        assert "refused" in said


@needs.program("msgcat")
def test_a_catalogue_that_another_program_wrote_is_ours_again(content: Path) -> None:
    """Source: GNU gettext's msgcat, which wraps and orders by its own taste."""
    translate(content, "take-out", "--to", "de")
    path = content / HEAD
    path.write_text(filled(path), encoding="utf-8")
    ours = path.read_bytes()
    path.write_bytes(subprocess.run(["msgcat", path], capture_output=True, check=True).stdout)
    assert path.read_bytes() != ours
    assert "written anew" in translate(content, "tidy")[1]
    assert path.read_bytes() == ours
