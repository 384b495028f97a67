"""A theme that is not there is told at its place; the list of words and the folders are the same."""

import json
from pathlib import Path

from guidebuild.read.content import read_content
from guidebuild.shipped import shipped


def test_a_theme_that_is_not_there_is_told_with_the_nearest(tmp_path: Path) -> None:
    (tmp_path / "guidebuild.yaml").write_text("languages: [en]\ntheme: plian\n", encoding="utf-8")
    content, found = read_content(tmp_path)
    (one,) = [finding for finding in found if finding.rule == "unknown-value"]
    assert (one.span.line, one.span.text) == (2, "plian")
    assert [edit.text for edit in one.edits] == ["plain"]
    assert (
        content.settings.theme == "plain"
    )  # surely meant: the author sees the page that was wished


def test_each_folder_of_themes_is_a_word_of_the_settings() -> None:
    schema = json.loads((shipped("schema") / "settings.schema.json").read_text(encoding="utf-8"))
    folders = {path.name for path in shipped("themes").iterdir() if path.is_dir()}
    assert set(schema["properties"]["theme"]["enum"]) == folders
