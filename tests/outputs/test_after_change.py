"""What the record wants after a change, and from which batch a kit fits: told where no step does it."""

from dataclasses import replace

from guidebuild.device.record import Device
from guidebuild.device.things import Part
from guidebuild.outputs.html.page.after import after_care
from guidebuild.outputs.html.page.kits import inspections
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move
from guidebuild.source.said import Said
from guidebuild.translate.messages.text import plain
from tests.outputs.demo import HEAD, readings

SET = "Set the print density (new: print head)."


def wanting(reading: Reading) -> Reading:
    """The demo's printer, whose record wants the density set after a new head."""
    device: Device = reading.device
    head = device.things["print-head"]
    assert isinstance(head, Part)
    wants = replace(head, after_change=(Said("density", head.span),))
    things = {**device.things, "print-head": wants}
    return replace(reading, proof=replace(reading.proof, device=replace(device, things=things)))


def without(reading: Reading, step: str) -> Reading:
    """The same guide, as if the step had no act."""
    passages = [
        replace(one, walked=()) if one.step.id == step else one for one in reading.proof.passages
    ]
    return replace(reading, proof=replace(reading.proof, passages=tuple(passages)))


def care(reading: Reading) -> list[str]:
    """What is left to do after the work."""
    return [plain(one) for one in after_care(reading, ()).care]


def test_a_step_that_sets_it_is_enough() -> None:
    assert SET not in care(wanting(readings()[HEAD]))


def test_without_that_step_the_reader_is_told() -> None:
    reading = wanting(readings()[HEAD])
    (step,) = {
        passage.step.id
        for passage in reading.proof.passages
        for one in passage.walked
        if isinstance(one.doing, Move) and one.doing.thing == "density"
    }
    assert SET in care(without(reading, step))
    assert SET not in care(without(readings()[HEAD], step))  # the record says nothing of it


def test_the_batch_from_which_a_kit_fits_is_looked_at_first() -> None:
    reading = readings()[HEAD]
    (use,) = reading.guide.kits
    batch = Said("24-117", use.kit.span)
    kit = replace(use.kit, from_batch=batch)
    guide = replace(reading.guide, kits=(replace(use, kit=kit),))
    told = replace(reading, proof=replace(reading.proof, guide=guide))
    first = plain(next(inspections(told)))
    assert first == "The batch on the bag is 24-117 or later: print head for Larch P2."
