"""All guides' outcomes made into one report's slips: allows, settings, and what shared stages tell twice."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from guidebuild.build.allows import Silence, about_allows
from guidebuild.build.loudness import Loudnesses
from guidebuild.build.outcome import Outcome
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Finding, Loudness

RANK = {loudness: rank for rank, loudness in enumerate(Loudness)}


def settle(
    outcomes: Iterable[Outcome],
    other: Iterable[Finding],
    loudnesses: Loudnesses,
    *,
    whole: bool = True,
) -> tuple[Slip, ...]:
    """The slips of a report, in its order. `other` is what was found outside of any guide."""
    outcomes = sorted(outcomes, key=lambda outcome: outcome.path)
    silence = Silence()
    heard = [
        slip
        for outcome in outcomes
        for slip in _loud(silence.heard(outcome), loudnesses, outcome.status)
    ]
    status = {outcome.path: outcome.status for outcome in outcomes}
    for slip in about_allows(outcomes, silence, whole):
        heard += _loud([slip], loudnesses, status[slip.guides[0]])
    heard += _loud((Slip(found, Loudness.ERROR) for found in other), loudnesses, "")
    return tuple(sorted(_joined(heard), key=lambda slip: slip.sort_key))


def _loud(slips: Iterable[Slip], loudnesses: Loudnesses, status: str) -> Iterator[Slip]:
    """The slips as loud as the settings make them; those that are off are gone."""
    for slip in slips:
        loudness = loudnesses.of(slip.finding.rule, slip.finding.category, status)
        if loudness is not None:
            yield replace(slip, loudness=loudness)


def _joined(slips: Iterable[Slip]) -> Iterable[Slip]:
    """One slip for what several guides tell of the same place in the same words, as loud as its loudest."""
    joined: dict[object, Slip] = {}
    for slip in slips:
        key = (slip.finding.sort_key, slip.finding.told)
        first = joined.get(key)
        joined[key] = slip if first is None else _both(first, slip)
    return joined.values()


def _both(first: Slip, second: Slip) -> Slip:
    guides = tuple(sorted({*first.guides, *second.guides}))
    loudest = max(first.loudness, second.loudness, key=RANK.__getitem__)
    known = first if first.step or not second.step else second
    return replace(known, loudness=loudest, guides=guides)
