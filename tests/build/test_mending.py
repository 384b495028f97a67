"""`--fix` on what people really get wrong: every rule's bad fixture that offers a fix, and slips of the finger."""

from pathlib import Path

import pytest

from guidebuild.build.fix import fix
from tests.build.breaking import grown, tried, without_cache
from tests.rules.fixture import fixtures

OFFER_A_FIX = {
    "caution-incomplete/bad-no-way-to-avoid-it",
    "caution-missing/bad-cell-not-told",
    "caution-missing/bad-told-in-one-revision",
    "caution-not-in-order/bad-notice-first",
    "caution-not-in-order/bad-three",
    "fence-not-closed/bad-open-to-the-end",
    "needs-quotes/bad-a-colon",
    "needs-quotes/bad-a-hash",
    "point-unknown/bad-outline-of-nothing",
    "two-names-for-one-thing/bad-written-otherwise",
    "unknown-block/bad-mistyped",
    "step-renamed/bad-new-heading",
    "unknown-id/bad-mistyped",
    "unknown-id/bad-no-such-hole",
    "unknown-key/bad-mistyped",
}
BAD = {f"{each.rule}/{each.path.stem}": each for each in fixtures() if each.is_bad}


@pytest.mark.parametrize("name", sorted(OFFER_A_FIX))
def test_a_fixture_that_offers_a_fix_is_mended(name: str, tmp_path: Path) -> None:
    BAD[name].lay_out(tmp_path)
    before = without_cache(tmp_path)
    assert any(slip.finding.edits for slip in before.slips)
    fixed = fix(tmp_path, without_cache)
    assert fixed.mended
    assert not grown(before, fixed.result)
    assert not [slip.finding for slip in fixed.result.slips if slip.finding.edits]
    for path, text in fixed.after.items():
        (tmp_path / path).write_text(text, encoding="utf-8")
    assert not fix(tmp_path, without_cache).after


@pytest.mark.parametrize("name", sorted(BAD.keys() - OFFER_A_FIX))
def test_what_offers_no_fix_is_left_as_it_is(name: str, tmp_path: Path) -> None:
    BAD[name].lay_out(tmp_path)
    fixed = fix(tmp_path, without_cache)
    assert (fixed.mended, fixed.after) == (0, {})


@pytest.mark.parametrize("seed", range(40))
def test_a_slip_of_the_finger_is_never_made_worse(seed: int) -> None:
    before, first, again = tried(seed)
    assert not grown(before, first.result)
    assert not again.after
