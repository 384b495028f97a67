"""What the kits bring: part numbers by form, and which kit a part or material comes with."""

from collections.abc import Iterator

from guidebuild.device.condition import Is
from guidebuild.device.kit import Form
from guidebuild.guide.guide import KitUse
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.translate.messages.text import Mark, Piece, Text, text


def forms(reading: Reading, use: KitUse, where: int) -> Iterator[tuple[Form, int]]:
    """The forms in which a kit may come, each with the configurations of `where`."""
    for form in use.kit.forms:
        if use.option is None:
            yield form, where
            continue
        one = Is(use.option, frozenset({form.id}), form.span)
        here = where & reading.configurations.bits(one)
        if here:
            yield form, here


def supplied_as(reading: Reading, key: str, where: int) -> Iterator[Text]:
    """Part number and kit of a new part: `LP2-110 from kit larch-head`."""
    id = reading.device.things[key].id
    for use in reading.guide.kits:
        if id not in {said.text for said in use.kit.brings}:
            continue
        numbers = [_number(form) for form, _ in forms(reading, use, where) if form.part_number]
        kit = reading.inside(use.kit.name.text)
        if numbers:
            yield reading.say("act.from-kit", number=reading.say.listed(numbers, "or"), kit=kit)
        else:
            yield reading.say("act.from-kit-bare", kit=kit)


def inspections(reading: Reading) -> Iterator[Text]:
    """What the reader looks at before the work: what the kits say, and from which batch they fit."""
    for kit in reading.kits:
        if kit.from_batch is not None:
            batch: Text = (Piece(kit.from_batch.text, Mark.QUANTITY),)
            kit_name = reading.inside(kit.name.text)
            yield reading.say("need.from-batch", batch=batch, kit=kit_name)
        yield from (reading.author.words(said) for said in kit.inspect)


def _number(form: Form) -> Text:
    assert form.part_number is not None
    number: Text = (Piece(form.part_number.text, Mark.QUANTITY),)
    return (*number, *text(f" ({form.name.text})")) if form.name is not None else number
