"""The record does not name the driver, and the standards of this head and thread differ.

An M2 pan head takes PH0 by today's standard and PH1 by the one that it replaced, and in Japan;
M3 takes PH1 or PH2. The reader takes the driver that lies nearest, and a driver one number off
cuts the recess.

Source: ISO 7045 to 7048, DIN 7985, DIN 967 and JIS B 1111, as the table of heads restates them.
"""

from collections.abc import Iterator

from guidebuild.device.drivers import by_standards, says_size
from guidebuild.device.screw import Screw
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.screws_used import screws_used
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "`{screw}` does not say its driver: {drivers}"

HELP = "write the driver behind the head ({example}), as you found it on the device"

_MOST = 4  # drivers listed; a bare thread fits a dozen


def check(proof: Proof) -> Iterator[Hit]:
    told: set[str] = set()
    for one in screws_used(proof):
        screw = one.screw
        if screw.text in told:
            continue
        told.add(screw.text)
        drivers = {} if says_size(screw) or screw.head is None else by_standards(screw)
        if len(drivers) > 1:
            yield Hit(screw.span or one.hole.span, _words(screw, drivers))


def _words(screw: Screw, drivers: dict[str, tuple[str, ...]]) -> dict[str, object]:
    listed = [
        f"{drive} by {_among(standards)}" for drive, standards in list(drivers.items())[:_MOST]
    ]
    if len(drivers) > _MOST:
        listed.append("and others")
    return {
        "screw": screw.text,
        "drivers": ", ".join(listed),
        "example": f"`{screw.text} {next(iter(drivers))}`",
    }


def _among(standards: tuple[str, ...]) -> str:
    return " and ".join(standards[:2])
