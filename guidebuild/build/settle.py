"""All guides' outcomes made into one report's slips: allows, settings, and what shared stages tell twice."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from guidebuild.build.allows import Silence, about_allows
from guidebuild.build.loudness import about_settings, loudness
from guidebuild.build.outcome import Outcome
from guidebuild.guide.settings import Settings
from guidebuild.reports.parts.slip import Slip
from guidebuild.source.finding import Finding, Loudness

RANK = {loud: rank for rank, loud in enumerate(Loudness)}


def settle(
    outcomes: Iterable[Outcome],
    other: Iterable[Finding],
    settings: Settings,
    *,
    whole: bool = True,
) -> tuple[Slip, ...]:
    """The slips of a report, in its order. `other` is what was found outside of any guide."""
    outcomes = sorted(outcomes, key=lambda outcome: outcome.path)
    silence = Silence()
    heard = [
        slip
        for outcome in outcomes
        for slip in _loud(silence.heard(outcome), settings, outcome.status)
    ]
    status = {outcome.path: outcome.status for outcome in outcomes}
    for slip in about_allows(outcomes, silence, whole):
        heard += _loud([slip], settings, status[slip.guides[0]])
    rest = (*other, *about_settings(settings))
    heard += _loud((Slip(found, Loudness.ERROR) for found in rest), settings, "")
    return tuple(sorted(_joined(heard), key=lambda slip: slip.sort_key))


def _loud(slips: Iterable[Slip], settings: Settings, status: str) -> Iterator[Slip]:
    """The slips as loud as the settings make them; those that are off are gone."""
    for slip in slips:
        found = slip.finding
        loud = loudness(settings, found.rule, found.category, status)
        if loud is not None:
            yield replace(slip, loudness=loud)


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
