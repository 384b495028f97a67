"""The rules that look at all guides at once, on what each guide alone had to say to them."""

from collections.abc import Iterable
from typing import Any

from guidebuild.build import rulebook
from guidebuild.build.fault import fault
from guidebuild.build.outcome import Outcome
from guidebuild.build.tell import finding
from guidebuild.reports.parts.report import Fault
from guidebuild.source.finding import Finding


def over(
    outcomes: Iterable[Outcome], rest: Iterable[tuple[str, Any]]
) -> tuple[list[Finding], list[Fault]]:
    """What they find, and what of them fell over. `rest`: what all that is no guide says, by rule."""
    by_rule: dict[str, list[Any]] = {}
    of_guides = (said for outcome in outcomes for said in outcome.gathered)
    for name, said in (*of_guides, *rest):
        by_rule.setdefault(name, []).append(said)
    found: list[Finding] = []
    faults: list[Fault] = []
    for name, gathered in sorted(by_rule.items()):
        rule = rulebook.entry(name)
        try:
            found += [finding(rule, hit) for hit in rule.over_all(gathered)]
        except Exception as error:
            faults.append(fault(error, name))
    return found, faults
