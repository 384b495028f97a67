"""The commented samples in `schema/samples` are a content folder, and nothing is wrong with it."""

import pytest
import yaml

from guidebuild.shipped import shipped
from tests.language.as_json import validator
from tests.language.folders import read

PLACES = {
    "guidebuild.yaml": "guidebuild.yaml",
    "tools.yaml": "tools.yaml",
    "terms.yaml": "terms.yaml",
    "device.yaml": "devices/larch-p2/device.yaml",
    "kit.yaml": "kits/larch-head.yaml",
    "guide.md": "guides/larch-p2/replace-the-print-head.md",
}
# What the guide shows; whether a picture can be read is asked by the rules, not by the reader.
SHOWN = {
    "guides/larch-p2/replace-the-print-head/pictures/open-cover.jpg": "",
    "guides/larch-p2/replace-the-print-head/open-the-cover.mp4": "",
}


def samples() -> dict[str, str]:
    """Every sample, where it would stand."""
    files = {path.name: path for path in (shipped("schema") / "samples").iterdir()}
    return {PLACES[name]: path.read_text(encoding="utf-8") for name, path in files.items()} | SHOWN


def test_the_samples_are_read_without_a_finding() -> None:
    content, findings = read(samples())
    assert [f"{one.span.line}: {one.rule}: {one.message}" for one in findings] == []
    assert [one.whole for one in content.guides] == [True]


@pytest.mark.parametrize("name", ["guidebuild", "tools", "terms", "device", "kit"])
def test_an_editor_that_knows_yaml_types_accepts_the_samples(name: str) -> None:
    text = (shipped("schema") / "samples" / f"{name}.yaml").read_text(encoding="utf-8")
    values = yaml.safe_load(text)  # `70` a number here, and `true` true
    schema = {"guidebuild": "settings"}.get(name, name)
    assert [error.message for error in validator(schema).iter_errors(values)] == []


def test_the_settings_are_what_the_sample_says() -> None:
    settings = read(samples())[0].settings
    assert settings.languages == ("en", "de", "pt-BR")
    assert str(settings.help_line) == "+44 1632 960017"
    assert settings.level("look-alike-screws", "draft") == "error"
    assert settings.level("picture-missing", "tried") == "note"
    assert settings.level("never-named", "tried") is None


def test_tools_and_terms_are_what_the_samples_say() -> None:
    content, _ = read(samples())
    tool = content.tools["tx8-driver"]
    assert (str(tool.name), [str(one) for one in tool.fits], tool.basic) == (
        "Screwdriver TX8",
        ["TX8"],
        True,
    )
    assert content.tools["alcohol-wipe"].material
    assert str(content.terms["en"].forbidden["ribbon"]) == "flex"
    assert str(content.terms["en"].approved["flex"]) == "A flat cable of printed film."
