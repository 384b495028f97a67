"""A source and its catalogue over time: random edits, and what becomes of each sentence's translation."""

from dataclasses import replace
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from guidebuild.guide.guide import Guide
from guidebuild.translate.catalogue.apply import Shown, Translator
from guidebuild.translate.catalogue.merge import merged
from guidebuild.translate.po.writer import write_po
from guidebuild.translate.segments.of_guide import guide_texts
from guidebuild.translate.segments.slots import Slots
from guidebuild.translate.segments.take import segments
from tests.translate.edits import (
    CHANGES,
    NOTHING,
    Line,
    Part,
    catalogue_of,
    edited,
    fresh,
    guide_of,
    part,
    translated,
    what_became,
)

SEEDS = st.integers(0, 2**32)
GRAVE = ("number", "unit", "negation")


def first(count: int) -> list[Part]:
    """A guide of some steps."""
    return [part(number) for number in range(1, count + 1)]


@settings(max_examples=300)
@given(SEEDS)
def test_what_still_holds_is_kept_and_what_changed_has_the_class_of_its_edit(seed: int) -> None:
    before, after, _ = edited(Random(seed), named=None)
    for (edit, became), _ in what_became(before, after).items():
        match edit:
            case "none" | "cosmetic":
                assert became == "kept"
            case "new":
                assert became in ("to translate", "outdated, taken for a neighbour")
            case _:
                neighbour = "outdated, taken for a neighbour"
                assert became in (f"outdated: {edit}", "to translate", neighbour)


def test_most_edits_are_told_and_hardly_a_sentence_is_to_be_translated_anew() -> None:
    """So that the law above is no empty one: of 200 guides' edits, each kind is told by its name."""
    told = [what_became(*edited(Random(seed), named=None)[:2]) for seed in range(200)]
    for edit in (*CHANGES, "signal word"):
        rows = [
            (became, number)
            for found in told
            for (one, became), number in found.items()
            if one == edit
        ]
        right = sum(n for became, n in rows if became in ("kept", f"outdated: {edit}"))
        assert right >= 25, edit
        assert right >= 0.85 * sum(n for _, n in rows), edit


@settings(max_examples=150)
@given(SEEDS)
def test_no_translation_is_ever_lost(seed: int) -> None:
    """Each stands in the new catalogue, and all are fresh again when the edits are taken back."""
    before, after, _ = edited(Random(seed), named=None)
    old = fresh(before)
    new = catalogue_of(after, old)
    said = {entry.translations for entry in new.entries}
    assert {entry.translations for entry in old.entries} <= said
    again = catalogue_of(before, new)
    live = [entry for entry in again.entries if not entry.obsolete]
    assert [(one.source, one.translations, one.fuzzy) for one in live] == [
        (one.source, one.translations, False) for one in old.entries
    ]


@settings(max_examples=150)
@given(SEEDS)
def test_taking_out_twice_is_taking_out_once(seed: int) -> None:
    """What is out of date stays so until somebody has looked at it, however often it is taken out."""
    before, after, _ = edited(Random(seed), named=None)
    once = catalogue_of(after, fresh(before))
    assert catalogue_of(after, once) == once


def in_language(guide: Guide, translator: Translator) -> Guide:
    translator.learn(segments(guide))
    return guide_texts(guide, Slots(translator))


@settings(max_examples=100)
@given(SEEDS)
def test_an_outdated_caution_number_or_negation_never_looks_fresh(seed: int) -> None:
    before, after, _ = edited(Random(seed), named=None)
    guide = guide_of(after)
    translator = Translator({guide.path: fresh(before)}, "en")
    told = in_language(guide, translator)
    stale = {one.source: one.shown for one in translator.stale.values()}
    for one in after:
        if one.hazard.edit not in ("", "cosmetic") or one.level == "danger":
            assert stale[one.hazard.words] in (Shown.SOURCE_FIRST, Shown.MISSING)
        for line in (one.title, *one.lines):
            if line.edit in GRAVE:
                assert stale[line.words] in (Shown.SOURCE_FIRST, Shown.MISSING)
            elif line.edit not in ("", "cosmetic"):
                assert line.words in stale
    assert len(told.steps) == len(guide.steps)


@settings(max_examples=100)
@given(SEEDS)
def test_what_is_inserted_changes_no_line_of_any_other_entry(seed: int) -> None:
    random = Random(seed)
    before = first(random.randint(2, 4))
    after = list(before)
    if random.random() < 0.3:
        after.insert(random.randint(0, len(after)), part(20))
    else:
        which, new = random.randrange(len(after)), Line(1, f"Brush it {seed} times.")
        lines, place = after[which].lines, random.randint(0, 3)
        after[which] = replace(after[which], lines=(*lines[:place], new, *lines[place:]))
    old = write_po(fresh(before)).split("\n\n")[1:]
    now = [
        block.strip() for block in write_po(catalogue_of(after, fresh(before))).split("\n\n")[1:]
    ]
    assert [block.strip() for block in old] == [block for block in now if 'msgstr ""' not in block]
    assert len(now) > len(old)


def test_a_retitled_step_without_an_id_keeps_its_translations() -> None:
    before = first(2)
    texts = segments(guide_of(before))
    catalogue = translated(merged(texts, NOTHING, "en", {}))
    moved = [replace(one, place=one.place.replace("part-1", "another-name")) for one in texts]
    after = merged(moved, catalogue, "en", {})
    assert all(entry.translations[0] == f"T[{entry.source}]" for entry in after.entries)
    assert not any(entry.fuzzy or entry.obsolete for entry in after.entries)


def test_what_is_gone_from_the_source_stays_at_the_end_of_the_catalogue() -> None:
    before = first(2)
    after = merged(segments(guide_of(before[:1])), fresh(before), "en", {})
    gone = [entry for entry in after.entries if entry.obsolete]
    assert {entry.source for entry in gone} >= {line.words for line in before[1].lines}
    again = merged(segments(guide_of(before)), after, "en", {})
    assert not any(entry.obsolete or not entry.translations[0] for entry in again.entries)


@pytest.mark.parametrize("steps", [1, 3])
def test_a_guide_in_its_own_language_is_the_guide(steps: int) -> None:
    guide = guide_of(first(steps))
    translator = Translator({guide.path: NOTHING}, "en")
    assert in_language(guide, translator) == guide
    assert len(translator.stale) == len(segments(guide))
