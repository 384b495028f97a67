"""The sentences of a draft: what is expected, and what to do when it is not so."""

import re
from collections.abc import Sequence

from guidebuild.device.naming import lowered
from guidebuild.device.record import Device
from guidebuild.plan.draft.names import name, names, plural, title

_PROTECTS = re.compile(r"\b(earth|earthing|ground|grounding|protective)\b", re.IGNORECASE)
MANY = 2  # of more plugs the function is named


def protects(device: Device, function: str) -> bool:
    """Whether it is there for a person's safety, so that switching on shows nothing: an earth is measured."""
    return _PROTECTS.search(device.functions[function].text) is not None


def works(device: Device, function: str) -> str:
    """`Keys and display work as before.`; an earth passes a test instead."""
    said = device.functions[function].text
    if protects(device, function):
        return f"{title(said)} passes the test that your local code asks for."
    return f"{title(said)} {'work' if plural(lowered(said)) else 'works'} as before."


def sits(device: Device, function: str, links: Sequence[str]) -> str:
    """A pull test: `The panel plug P4 does not move when you pull at it.`"""
    if len(set(links)) > MANY:
        return f"No plug for {lowered(device.functions[function].text)} moves when you pull at it."
    said = title(names(device, links))
    several = len(set(links)) > 1 or plural(name(device, links[0]))
    return f"{said} {'do' if several else 'does'} not move when you pull at {'them' if several else 'it'}."


def fails(device: Device, function: str) -> str:
    """The heading of a remedy: `Printing does not work`."""
    said = device.functions[function].text
    if protects(device, function):
        return f"{title(said)} is not in order"
    return f"{title(said)} {'do' if plural(lowered(said)) else 'does'} not work"


def give_up(device: Device, noun: str, sources: Sequence[str], live: bool) -> str:
    """What to do after the last try, with nothing left switched on."""
    if not sources:
        return f"Mark the {noun} as not ready for use, and ask the help line."
    off = f"Switch the {noun} off, and open" if live else "Leave"
    rest = "" if live else " open"
    return f"{off} {names(device, sources)}{rest}. Ask the help line."


def stop(noun: str, powered: bool, plugged: bool) -> str:
    """What to do when the closed device does not do what it did. `plugged`: it is fed from outside."""
    if not powered:
        return f"Mark the {noun} as not ready for use, and ask the help line."
    return f"Switch the {noun} off{' and unplug it' if plugged else ''}. Ask the help line."
