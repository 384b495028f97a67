"""`guidebuild check` on a whole small project, as a person or a build server runs it."""

import json
import os
from pathlib import Path

import jsonschema
import pytest

from guidebuild.shipped import shipped
from tests.whole.project import Said, change, copy, guidebuild

SAID = Path(__file__).parent / "said"
SARIF = Path(__file__).parents[1] / "reports" / "data"  # the OASIS schema, see its README
GUIDE = "content/guides/brill-7/change-lamp.md"


@pytest.fixture
def lamp(tmp_path: Path) -> Path:
    return copy("lamp", tmp_path)


def check(project: Path, *words: str, **env: str) -> Said:
    return guidebuild("check", *words, cwd=project, **env)


def test_a_guide_that_works_out_is_told_in_one_line(lamp: Path) -> None:
    assert check(lamp) == Said(0, "All is well. Proved: 1 guide, 2 configurations.\n", "")


def test_a_screw_that_is_not_put_back_is_a_slip(lamp: Path) -> None:
    change(lamp / GUIDE, "refit: shade\ndo-up: shade-screws", "refit: shade")
    said = check(lamp)
    assert said.code == 1
    assert said.out == (SAID / "screws-not-back.txt").read_text(encoding="utf-8")


def test_the_units_in_which_it_is_so_are_told(lamp: Path) -> None:
    change(lamp / GUIDE, "do-up: shade-screws", "do-up: shade-screws.left")
    said = check(lamp)
    assert said.code == 1
    assert "Units  Only when edition = b (1 of 2 configurations)." in said.out


def test_plain_words_for_a_screen_reader(lamp: Path) -> None:
    change(lamp / GUIDE, "refit: shade\ndo-up: shade-screws", "refit: shade")
    said = check(lamp, "--report", "plain=-")
    assert said.out == (SAID / "screws-not-back-plain.txt").read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("refit: shade\ndo-up: shade-screws", "refit: shade"),
        ("do-up: shade-screws", "do-up: shade-screws.left"),
        ("undo: shade-screws", "undo: shade-scrws"),
    ],
)
def test_what_is_written_for_machines_keeps_to_its_schema(lamp: Path, old: str, new: str) -> None:
    change(lamp / GUIDE, old, new)
    check(lamp, "--report=json=out.json", "--report=sarif=out.sarif")
    ours = json.loads((shipped("schema") / "report.schema.json").read_text(encoding="utf-8"))
    sarif = json.loads((SARIF / "sarif-2.1.0-rtm.5.json").read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator(ours).validate(json.loads((lamp / "out.json").read_bytes()))
    jsonschema.Draft4Validator(sarif).validate(json.loads((lamp / "out.sarif").read_bytes()))


def test_several_reports_in_one_run(lamp: Path) -> None:
    change(lamp / GUIDE, "undo: shade-screws", "undo: shade-scrws")
    files = {name: lamp / f"out.{name}" for name in ("json", "sarif", "junit", "code-quality")}
    said = check(lamp, *(f"--report={name}={file}" for name, file in files.items()))
    assert said.code == 1
    assert "Wrong" in said.out
    assert json.loads(files["json"].read_text())["counts"]["error"] == 1
    assert all(file.stat().st_size > 100 for file in files.values())


@pytest.mark.parametrize(
    "path", ["content", "content/guides", "content/guides/brill-7", GUIDE, f"./{GUIDE}"]
)
def test_any_part_of_the_content_may_be_named(lamp: Path, path: str) -> None:
    assert check(lamp, path).out == "All is well. Proved: 1 guide, 2 configurations.\n"


def test_of_a_record_what_is_wrong_in_it_is_told_and_no_more(lamp: Path) -> None:
    change(lamp / GUIDE, "undo: shade-screws", "undo: shade-scrws")
    change(lamp / "content/devices/brill-7/device.yaml", "holds: shade", "holds: shad")
    said = check(lamp, "content/devices/brill-7")
    assert said.code == 1
    assert "shad" in said.out
    assert "shade-scrws" not in said.out


def test_one_stands_anywhere_and_the_paths_lead_from_there(lamp: Path) -> None:
    change(lamp / GUIDE, "undo: shade-screws", "undo: shade-scrws")
    said = guidebuild("check", cwd=lamp / "content" / "guides")
    assert said.code == 1
    assert "../guides/brill-7/change-lamp.md, line 28" in said.out


def test_spaces_and_letters_of_other_scripts_in_the_path(lamp: Path) -> None:
    odd = lamp.rename(lamp.parent / "Werk statt ÄÖ 作業台 %20 #1")
    assert check(odd).code == 0
    change(odd / GUIDE, "undo: shade-screws", "undo: shade-scrws")
    (odd / GUIDE).rename(odd / "content/guides/brill-7/Lampe wechseln 電球.md")
    said = check(odd, "--report", "sarif=-", ".")
    assert said.code == 2, "the project's folder is not the content folder"
    said = check(odd, "--report", "sarif=-")
    location = json.loads(said.out)["runs"][0]["results"][0]["locations"][0]["physicalLocation"]
    assert (
        location["artifactLocation"]["uri"]
        == "content/guides/brill-7/Lampe%20wechseln%20%E9%9B%BB%E7%90%83.md"
    )


def test_a_screen_that_knows_ascii_only(lamp: Path) -> None:
    change(lamp / GUIDE, "undo: shade-screws", "undo: shade-scrws")
    said = check(lamp, PYTHONIOENCODING="ascii")
    assert said.code == 1
    assert "undo: >>shade-scrws<<" in said.out
    assert said.out.isascii()


def test_a_folder_without_a_guide_is_well(tmp_path: Path) -> None:
    (tmp_path / "content").mkdir()
    (tmp_path / "content" / "guidebuild.yaml").write_text("publisher: A\n")
    assert check(tmp_path) == Said(0, "There is no guide here.\n", "")


def test_an_empty_folder_is_no_content_folder(tmp_path: Path) -> None:
    said = check(tmp_path)
    assert said.code == 2
    assert "is no content folder" in said.err


def test_a_folder_that_is_not_there(tmp_path: Path) -> None:
    assert check(tmp_path, "nowhere").code == 2


@pytest.mark.parametrize(
    ("name", "data"),
    [
        ("guides/brill-7/odd.md", b"\xff\xfe\x00not text"),
        ("guides/brill-7/odd.md", b"---\ntitle: [\n---\n# A\n## B\n```part\nremove: [\n"),
        ("guides/brill-7/odd.md", b""),
        ("devices/brill-7/device.yaml", b"device: brill-7\nparts: {a: &a [*a]}\n"),
        ("guidebuild.yaml", b"rules: {no-such-rule: off, look-alike-screws: loud}\n"),
        ("tools.yaml", b"\t- :"),
    ],
)
def test_a_broken_file_is_told_and_hides_nothing(lamp: Path, name: str, data: bytes) -> None:
    file = lamp / "content" / name
    file.write_bytes(data)
    said = check(lamp)
    assert said.code == 1
    assert f"content/{name}" in said.out
    assert said.err == ""


def test_the_same_content_gives_the_same_bytes(lamp: Path) -> None:
    change(lamp / GUIDE, "refit: shade\ndo-up: shade-screws", "refit: shade")
    said = {check(lamp, "--report=json=-", PYTHONHASHSEED=seed).out for seed in "123"}
    assert len(said) == 1


def test_two_processes_say_what_one_says(lamp: Path) -> None:
    text = (lamp / GUIDE).read_text(encoding="utf-8")
    change(lamp / GUIDE, "title: Change the lamp", "title: Change the lamp of the Brill 7")
    for number in range(30):
        guide = lamp / "content" / "guides" / "brill-7" / f"again-{number}.md"
        guide.write_text(
            text.replace("do-up: shade-screws", "do-up: []") if number % 3 else text,
            encoding="utf-8",
        )
    change(lamp / "content/devices/brill-7/device.yaml", "name: Lamp plug", "nam: Lamp plug")
    (lamp / "content/kits").mkdir()
    (lamp / "content/kits/unused.yaml").write_text("kit: unsed\nname: Nobody's kit\n")
    alone = check(lamp, "--jobs=1", "--report=json=-")
    shared = check(lamp, "--jobs=2", "--report=json=-")
    assert alone.code == 1
    assert alone == shared


def test_only_what_is_new_since_an_earlier_report(lamp: Path) -> None:
    change(lamp / GUIDE, "refit: shade\ndo-up: shade-screws", "refit: shade")
    assert check(lamp, "--report=json=before.json").code == 1
    change(lamp / GUIDE, "A lamp that has gone out", "\n\nA lamp that has gone out")
    said = check(lamp, "--since", "before.json")
    assert said.code == 0
    assert " ".join(said.out.split()) == (
        "Nothing new. Proved: 1 guide, 2 configurations. Known from before and left out: 1 finding."
    )
    change(lamp / GUIDE, "do-up: [lamp-screw, lamp-plug]", "do-up: [lamp-plug]")
    said = check(lamp, "--since", "before.json")
    assert said.code == 1
    assert "lamp-screw" in said.out
    assert "shade-screws" not in said.out


def test_settings_make_a_rule_a_note_which_does_not_fail(lamp: Path) -> None:
    change(lamp / GUIDE, "refit: shade\ndo-up: shade-screws", "refit: shade")
    with (lamp / "content/guidebuild.yaml").open("a") as settings:
        settings.write("rules: {fastener-not-returned: note}\n")
    said = check(lamp)
    assert said.code == 0
    assert "note" in said.out


def test_a_report_that_can_t_be_written_is_told(lamp: Path) -> None:
    said = check(lamp, "--report=json=no/such/folder.json")
    assert said.code == 2
    assert "Can't write" in said.err


def test_a_report_may_go_into_the_void(lamp: Path) -> None:
    assert check(lamp, f"--report=json={os.devnull}").code == 0
    assert not Path(os.devnull).is_file()
