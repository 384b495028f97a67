"""The schemas are the one definition of shape: our reader refuses what they refuse, and nothing else.

Reference: the jsonschema package (an implementation of JSON Schema 2020-12 by others).
"""

import copy
from functools import cache
from typing import Any

import pytest
import yaml
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from guidebuild.read.report import Report
from guidebuild.read.shape.schema import block_names, document
from guidebuild.read.yaml.read import read_value
from guidebuild.shipped import shipped
from guidebuild.source.text import Source
from tests.language.as_json import as_yaml, plain, validator

DOCUMENTS = ("device", "kit", "guide", "shared", "settings", "tools", "terms")
NAMES = (*DOCUMENTS, *(f"blocks/{name}" for name in block_names()))
# What one value says is finer than what a pattern can: such a value may be refused by the reader alone.
FINER = {"condition-not-readable"}
FINER_WORDS = (
    "be a screw",
    "be a time",
    "be two times",
    "be a number with its unit",
    "be a torque",
)

ACT = {"when": "revision = b", "with": ["spudger"], "if-stuck": "Warm it.", "note": "Gently."}
EXAMPLES: dict[str, list[Any]] = {
    "shared": [{"device": "larch-p2"}, {"devices": ["a", "b"], "allow": {"no-test-at-all": "Shared."}}],
    "blocks/fastener": [{"tighten": ["a.b", "c"], "torque": "0.3 N·m", "sequence": "cross", **ACT}],
    "blocks/connector": [[{"disconnect": "plug"}, {"reconnect": ["plug", "flex"], **ACT}]],
    "blocks/part": [{"lift": "cover", "undo": ["a", "b.c"], "angle": "70", "support": "A book.", "first": "x"}],
    "blocks/joint": [{"renew": "seal", "press": "30 s", "cure": "2 h", **ACT}],
    "blocks/power": [{"switch-off": "device", "hold": "3 s"}],
    "blocks/store": [{"release": "charge", "hold": "5 min", "by": "Short it.", **ACT}],
    "blocks/tool": [{"use": ["card"], "note": "Clean."}],
    "blocks/material": [{"use": "wipe", "amount": "2", "when": "dust = dusty"}],
    "blocks/caution": [[{"for": "cell"}, {"warning": "Hot.", "result": "Burns.", "avoid": ["Wait."]}]],
    "blocks/check": [
        {"expect": "It prints.", "tests": ["printing"], "powered": "true", "faults": [{"see": "Dark.", "go": "flex"}]},
        {"expect": "5 V", "measure": {"quantity": "voltage", "min": "4.8 V", "max": "5.2 V"}, "stop": "Ask."},
    ],
    "blocks/wait": [{"time": "2m10s", "reason": "It cools."}],
    "blocks/points": [{"here": ["16", "30"], "keep-out": [["1", "2"], ["3", "4"]],
                       "arrow": [[["1", "2"], ["3", "4"]]]}],
    "blocks/video": [{"show": "2m10s to 3m05s", "file": "film.mp4"}],
    "blocks/stage": [{"id": "x", "when": "a = b", "remedy": {"for": ["keys"], "resume": "y", "tries": "2"},
                      "then": "Ask."}],
    "blocks/step": [{"id": "x", "minutes": "5", "people": "2", "optional": "false", "same-as": "y"}],
    "blocks/method": [{"when": "a = b"}],
}  # fmt: skip
WORDS = st.sampled_from(
    ["", "text", "5", "-2.5", "true", "yes", "device", "cross", "M2x4 pan TX6", "90 s", "0.3 N·m", "by-hand",
     "revision = b", "plug-plate", "a.b", "Plug Plate", "é", "draft", "none", "000001", "1e5", "a b\n"]
)  # fmt: skip
VALUES = st.recursive(
    st.one_of(st.none(), WORDS),
    lambda inner: (
        st.lists(inner, max_size=3) | st.dictionaries(WORDS.filter(bool), inner, max_size=3)
    ),
    max_leaves=6,
)


@cache
def examples(name: str) -> list[Any]:
    """Valid documents: those above, and the samples."""
    found = list(EXAMPLES.get(name, []))
    files = {"settings": "guidebuild.yaml"}
    sample = shipped("schema") / "samples" / files.get(name, f"{name}.yaml")
    if sample.exists():
        found.append(_load(sample.read_text(encoding="utf-8")))
    if name == "guide":
        text = (shipped("schema") / "samples" / "guide.md").read_text(encoding="utf-8")
        found.append(_load(text.split("---\n")[1]))
    return found


def _load(text: str) -> Any:
    return plain(yaml.compose(text, Loader=yaml.CSafeLoader))


def refused(name: str, value: Any) -> list[str]:
    """What our reader says against a document."""
    source = Source("x", as_yaml(value) + "\n")
    report = Report()
    read_value(source, 0, len(source.text), name, name, report)
    return [
        f"{one.rule}: {one.message}"
        for one in report.findings
        if one.rule not in FINER and not any(words in one.message for words in FINER_WORDS)
    ]


def finer(name: str, value: Any) -> bool:
    """Whether the reader refuses something that only it can judge."""
    source = Source("x", as_yaml(value) + "\n")
    report = Report()
    read_value(source, 0, len(source.text), name, name, report)
    return bool(report.findings)


@pytest.mark.parametrize("name", (*NAMES, "words"))
def test_a_schema_is_a_schema(name: str) -> None:
    Draft202012Validator.check_schema(document(name))
    assert document(name)["title"]
    assert document(name)["description"].endswith(".")


@pytest.mark.parametrize("name", NAMES)
def test_both_accept_what_is_right(name: str) -> None:
    assert examples(name)
    for value in examples(name):
        assert [error.message for error in validator(name).iter_errors(value)] == []
        assert refused(name, value) == []


def changed(draw: st.DrawFn, value: Any) -> Any:
    """One thing made different, somewhere in a document."""
    places = list(_places(value, ()))
    path = draw(st.sampled_from(places))
    if not path:
        return draw(VALUES)
    inside = value
    for key in path[:-1]:
        inside = inside[key]
    last = path[-1]
    match draw(st.sampled_from(["value", "value", "take out", "wrap", "rename", "more"])):
        case "take out":
            del inside[last]
        case "wrap":
            inside[last] = [inside[last]]
        case "rename" if isinstance(inside, dict):
            inside[draw(WORDS.filter(bool))] = inside.pop(last)
        case "more" if isinstance(inside, dict):
            inside[draw(WORDS.filter(bool))] = draw(VALUES)
        case _:
            inside[last] = draw(VALUES)
    return value


def _places(value: Any, path: tuple[Any, ...]) -> Any:
    yield path
    pairs = (
        value.items()
        if isinstance(value, dict)
        else enumerate(value)
        if isinstance(value, list)
        else ()
    )
    for key, one in pairs:
        yield from _places(one, (*path, key))


@st.composite
def documents(draw: st.DrawFn) -> tuple[str, Any]:
    """A kind of document, and one that is right but for a change or two."""
    name = draw(st.sampled_from(NAMES))
    value = copy.deepcopy(draw(st.sampled_from(examples(name))))
    for _ in range(draw(st.integers(1, 2))):
        value = changed(draw, value)
    return name, value


@settings(max_examples=600, deadline=None)
@given(documents())
def test_both_refuse_what_is_wrong(case: tuple[str, Any]) -> None:
    name, value = case[0], _load(as_yaml(case[1]) or "''")
    theirs = [error.message for error in validator(name).iter_errors(value)]
    if not theirs:
        assert refused(name, value) == []
    else:
        assert finer(name, value)
