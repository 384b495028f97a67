"""The tally tells of power only where something feeds the device, or an act switches it."""

from dataclasses import replace

from guidebuild.device.record import POWER
from guidebuild.device.things import Connector
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.tally import tally
from guidebuild.translate.messages.text import plain
from tests.outputs.demo import BOARD, HEAD, readings

VALVE = "replace-the-seat-ring"


def said(reading: Reading) -> set[str]:
    """What the last cell says after each step."""
    return {
        plain(item.words)
        for passage in reading.passages.values()
        for item in tally(reading, passage).stores
    }


def test_a_device_without_a_source_says_nothing_of_power() -> None:
    reading = readings()[VALVE]
    assert reading.device.things[POWER]  # every record has it
    assert not {"on", "off"} & said(reading) and said(reading)


def test_a_signal_lead_is_no_source() -> None:
    """A hose or a signal lead is a plug, and feeds nothing."""
    reading = readings()[VALVE]
    lead = Connector(key="lead", id="lead", span=reading.device.span, kind=_KIND, live="any")
    things = {**reading.device.things, "lead": lead}
    device = replace(
        reading.device, things=things, names={**reading.device.names, "lead": ("lead",)}
    )
    proof = replace(reading.proof, device=device)
    assert not {"on", "off"} & said(replace(reading, proof=proof))


def test_a_device_with_a_plug_that_feeds_it_says_it() -> None:
    assert "off" in said(readings()[HEAD])
    assert "off" in said(readings()[BOARD])


_KIND = next(one.kind for one in readings()[HEAD].device.connectors)
