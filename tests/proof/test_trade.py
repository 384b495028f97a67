"""Facts of the trade, as whole guides through all the rules.

Each is common practice, no source: what a fitter is told in the first week.
"""

import shutil
from pathlib import Path

import pytest

from guidebuild.build.check import check

TRADE = Path(__file__).parent / "trade"
ASKED = {
    "fastener-in-wrong-hole",
    "look-alike-screws",
    "live-disconnect",
    "live-reconnect",
    "function-untested",
    "test-after-closing",
}

FACTS = {
    "right": set(),
    "screws-in-each-others-holes": {"fastener-in-wrong-hole"},
    "look-alikes-not-told-apart": {"look-alike-screws"},
    "source-opens-last": {"live-disconnect"},
    "source-closes-first": {"live-reconnect"},
    "remedy-without-isolation": {"live-disconnect"},
    "test-after-closing": {"test-after-closing"},
    "no-test": {"function-untested"},
}


@pytest.fixture(scope="module")
def told(tmp_path_factory: pytest.TempPathFactory) -> dict[str, set[str]]:
    """For each guide the rules that spoke, of those asked."""
    root = tmp_path_factory.mktemp("trade")
    (root / "devices" / "fan-unit").mkdir(parents=True)
    (root / "guides" / "fan-unit").mkdir(parents=True)
    shutil.copy(TRADE / "device.yaml", root / "devices" / "fan-unit")
    for guide in TRADE.glob("*.md"):
        shutil.copy(guide, root / "guides" / "fan-unit")
    found: dict[str, set[str]] = {guide.stem: set() for guide in TRADE.glob("*.md")}
    for finding in check(root, jobs=1, cache=False).findings:
        path = Path(finding.span.source.path)
        if path.stem in found:
            found[path.stem].add(finding.rule)
    return found


def test_every_fact_has_its_guide() -> None:
    assert FACTS.keys() == {guide.stem for guide in TRADE.glob("*.md")}


@pytest.mark.parametrize("fact", FACTS)
def test_a_fact_of_the_trade(fact: str, told: dict[str, set[str]]) -> None:
    spoke = told[fact] & ASKED
    assert FACTS[fact] <= spoke
    # look-alikes lie on the mat in every one of these, and only the right guide tells them apart
    assert spoke - FACTS[fact] <= {"look-alike-screws", "function-untested"}
    if fact == "right":
        assert not spoke
