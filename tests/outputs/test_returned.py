"""The return sheet: the parts that are changed, the faults of the page, and every value that is measured."""

import pytest

from guidebuild.outputs.html.page.code import checks
from guidebuild.translate.messages.text import plain
from tests.outputs.demo import BOARD, GUIDES, HEAD, page


def test_old_and_new_may_go_back_or_the_whole_device() -> None:
    assert [plain(one) for one in page(HEAD).returned.goes] == [
        "old M\u00a0print head",
        "new M\u00a0print head",
        "the whole device",
    ]


@pytest.mark.parametrize("guide", GUIDES)
def test_each_address_survives_a_telephone(guide: str) -> None:
    codes = [step.code for step in page(guide).steps]
    assert all(checks(code) for code in codes) and len(set(codes)) == len(codes)


def test_what_was_measured_stands_in_the_field_of_its_check() -> None:
    view = page(BOARD)
    asked = [f"{check.id}.v" for step in view.steps for check in step.checks if check.measured]
    assert [one.id for one in view.returned.values] == asked and len(asked) == 6


def test_what_is_seen_is_what_the_list_of_faults_tells_each_once() -> None:
    seen = [plain(one) for one in page(HEAD).returned.seen]
    assert "The label is white, or has white lines." in seen
    assert len(set(seen)) == len(seen)
