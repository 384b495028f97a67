"""How long the work takes, over all configurations: from the steps' minutes and the waits."""

from collections.abc import Iterable
from decimal import Decimal

from guidebuild.guide.blocks.wait import Wait
from guidebuild.guide.inside import items
from guidebuild.outputs.html.page.counting import add
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.translate.messages.text import Text


def work_time(reading: Reading) -> Text:
    """The time of all steps of the main way that say one; empty where none does."""
    weighted = [
        (int(passage.step.minutes.value * 60), passage.shown)
        for passage in reading.proof.passages
        if passage.stage.remedy is None and passage.step.minutes is not None
    ]
    return _range(reading, weighted)


def waiting_time(reading: Reading) -> Text:
    """How much of it is waiting."""
    weighted = [
        (int(item.time.value), passage.shown & reading.configurations.bits(item.when))
        for passage in reading.proof.passages
        if passage.stage.remedy is None
        for item in items(passage.step)
        if isinstance(item, Wait)
    ]
    return _range(reading, weighted)


def _range(reading: Reading, weighted: Iterable[tuple[int, int]]) -> Text:
    totals = list(add(weighted, reading.configurations.everywhere))
    least, most = min(totals), max(totals)
    if not most:
        return ()
    say = reading.say
    if least == most or least // 60 == most // 60:
        return say.time(Decimal(most))
    if least % 60 == most % 60 == 0 and most < 7200:
        high = say.quantity(Decimal(most // 60), "min")
        return say("range.between", low=least // 60, high=high)
    return say("range.between", low=say.time(Decimal(least)), high=say.time(Decimal(most)))
