"""A record that leaves no way says which things wait for one another."""

import pytest

from guidebuild.plan.stuck import circle
from tests.plan.records import device

HEAD = "base: frame\nidentify: {expect: A device.}\n"


@pytest.mark.parametrize(
    ("body", "words"),
    [
        (
            "parts: {frame: Frame, a: {name: A, behind: b}, b: {name: B, behind: a}}\n",
            ["a lies behind b", "b lies behind a"],
        ),
        (
            "parts: {frame: Frame, cap: Cap}\n"
            "stores: {oil: {name: Oil, kind: fluid, in: frame, behind: cap, guards: [cap]}}\n",
            ["cap is guarded by oil", "oil lies behind cap"],
        ),
        ("parts: {frame: Frame, a: A}\n", []),
    ],
)
def test_the_circle_is_told(body: str, words: list[str]) -> None:
    made = device(HEAD + body)
    part = next(part.key for part in made.parts if part.id != "frame")
    assert circle(made, part) == words
