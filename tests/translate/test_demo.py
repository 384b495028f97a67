"""The demo's languages: all of it in German and in Arabic, and nothing out of date."""

from functools import cache
from pathlib import Path

import pytest

from guidebuild.build.language_status import states
from guidebuild.build.translations import Translation, translation
from guidebuild.guide.content import Content
from guidebuild.proof.prove import prove
from guidebuild.read.content import read_content

ROOT = Path(__file__).resolve().parents[2] / "content"
HEAD = "guides/larch-p2/replace-the-print-head.md"


@cache
def content() -> Content:
    return read_content(ROOT)[0]


@cache
def told(language: str) -> Translation:
    return translation(ROOT, content(), language, [HEAD])


@pytest.mark.parametrize("language", ["de", "ar"])
def test_everything_is_translated_and_fresh(language: str) -> None:
    mine = [state for one, _, state in states(ROOT, content()) if one == language]
    assert len(mine) >= 16
    assert all(state.fresh == state.total > 0 for state in mine)


@pytest.mark.parametrize("language", ["de", "ar"])
def test_a_question_that_a_kit_or_a_record_asks_is_in_its_words(language: str) -> None:
    source = next(one.guide for one in content().guides if one.guide.path == HEAD)
    guide = next(one.guide for one in told(language).content.guides if one.guide.path == HEAD)
    assert {one.id for one in guide.options} == {"revision", "supplied"}
    for option, own in zip(guide.options, source.options, strict=True):
        assert option.ask.text != own.ask.text
        assert [value.id for value in option.values] == [value.id for value in own.values]
    supplied = next(one for one in guide.options if one.id == "supplied")
    (use,) = guide.kits
    assert supplied.ask == use.kit.name
    assert [one.label for one in supplied.values] == [form.name for form in use.kit.forms]


@pytest.mark.parametrize("language", ["de", "ar", "en-XA", "ar-XB"])
def test_the_proof_of_a_translation_is_the_proof_of_its_source(language: str) -> None:
    one = next(one for one in content().guides if one.guide.path == HEAD)
    source, proof = prove(one.guide, one.device), told(language).proofs[0]
    assert proof.configurations.total == source.configurations.total
    assert [one.step.id for one in proof.passages] == [one.step.id for one in source.passages]
    assert (proof.unmet, proof.endings) == (source.unmet, source.endings)
