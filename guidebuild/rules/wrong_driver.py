"""The driver that is named does not fit the screw.

A driver of the wrong kind or size slips and cuts the recess round; then the screw must be drilled
out over an open device. A driver that is one number too small does it almost as surely as one of
another kind. A driver with a hole for a pin fits a recess without one.

Source: ISO 4757, ISO 10664 and ISO 2936 for kinds and sizes of recesses; for a screw that is
named by its product standard, that standard (the table says in which works it was read).
"""

from collections.abc import Iterator

from guidebuild.device.drivers import any_fits, by_standards, drive_meant, says_size
from guidebuild.device.screw import Screw
from guidebuild.guide.content import Content
from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.proof.questions.joined import shown
from guidebuild.proof.questions.once import once
from guidebuild.proof.questions.screws_used import Driven, driven, screws_used
from guidebuild.source.finding import Category, Related
from guidebuild.source.said import Said
from guidebuild.source.span import Span

RULE = Rule(category=Category.CORRECTNESS)

MESSAGE = "{named} does not fit `{screw}`, which takes {drive}"

HELP = "name the driver that fits, or correct the drive of the screw in the record"


def check(proof: Proof, content: Content) -> Iterator[Hit]:
    yield from once([*_named_in_acts(proof, content), *_against_their_standard(proof)])


def _named_in_acts(proof: Proof, content: Content) -> Iterator[Hit]:
    for one in driven(proof):
        tools = one.move.act.with_ or one.hole.with_
        drivers = _drivers(content, tools)
        drive = one.screw.drive
        if drivers and drive and not any_fits(drivers, drive):
            yield _hit(proof, one, tools[0].span, " or ".join(drivers), drive)


def _drivers(content: Content, tools: tuple[Said, ...]) -> list[str]:
    """What the drivers among the tools fit; empty as soon as one is no driver, for it may be the one."""
    found: list[str] = []
    for said in tools:
        tool = content.tools.get(said.text)
        drives = [drive_meant(fit.text) for fit in tool.fits] if tool else []
        if not drives or None in drives:
            return []
        found += [drive for drive in drives if drive]
    return found


def _against_their_standard(proof: Proof) -> Iterator[Hit]:
    for one in screws_used(proof):
        right = _by_named_standard(one.screw)
        if right and one.screw.drive not in right and one.screw.span:
            yield _hit(proof, one, one.screw.span, one.screw.drive or "", " or ".join(right))


def _by_named_standard(screw: Screw) -> list[str]:
    """The drivers of the same kind that the screw's own standard gives; empty where it names none."""
    return list(by_standards(screw)) if screw.standard and says_size(screw) else []


def _hit(proof: Proof, one: Driven, span: Span, named: str, drive: str) -> Hit:
    words = {"named": named, "screw": one.screw.text, "drive": drive}
    place = one.screw.span or one.hole.span
    related = () if place == span else (Related(place, "the record tells the screw here"),)
    return Hit(span, words, related, one.where, shown(proof, one.move.step))
