"""Parts and materials: what is fitted new or used up, its number, and which kit brings it."""

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from guidebuild.device.acts import REPLACING
from guidebuild.device.things import Joint, Part
from guidebuild.guide.blocks.use import Use
from guidebuild.guide.guide import KitUse
from guidebuild.guide.inside import items
from guidebuild.outputs.html.page.kits import forms
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.when import When
from guidebuild.proof.mistake import Move
from guidebuild.translate.messages.text import Mark, Text, joined, text


@dataclass(frozen=True, slots=True)
class Supply:
    """`source` says the kit, or that none brings it."""

    name: Text
    number: str
    source: Text
    when: When | None = None


def supplies(reading: Reading) -> tuple[Supply, ...]:
    """What the kits bring, then what else the steps use up."""
    found = [one for use in reading.guide.kits for one in _of_kit(reading, use)]
    brought = {
        amount.item.text
        for kit in reading.kits
        for amount in (*kit.materials, *(a for form in kit.forms for a in form.materials))
    } | {said.text for kit in reading.kits for said in kit.brings}
    return (*found, *_others(reading, brought))


def _of_kit(reading: Reading, use: KitUse) -> Iterator[Supply]:
    everywhere = reading.configurations.everywhere
    alone = len(reading.guide.kits) == 1
    source = reading.say("need.in-kit" if alone else "need.kit", kit=use.kit.name.text)
    for form, where in forms(reading, use, everywhere):
        name = reading.say.listed([_named(reading, said.text) for said in use.kit.brings], "unit")
        number = form.part_number.text if form.part_number else ""
        yield Supply(name, number, source, reading.when(where, everywhere))
        for amount in form.materials:
            more = _amount(reading, amount.item.text, amount.count)
            yield Supply(more, "", source, reading.when(where, everywhere))
    for amount in use.kit.materials:
        yield Supply(_amount(reading, amount.item.text, amount.count), "", source)


def _others(reading: Reading, brought: set[str]) -> Iterator[Supply]:
    """Single-use things that are renewed, and materials, as far as no kit brings them."""
    source = reading.say("need.no-kit")
    everywhere = reading.configurations.everywhere
    where: dict[str, int] = {}
    for passage in reading.proof.passages:
        for one in passage.walked:
            if isinstance(one.doing, Move) and one.doing.verb in REPLACING:
                thing = reading.device.things[one.doing.thing]
                if isinstance(thing, Joint | Part):
                    where[thing.id] = where.get(thing.id, 0) | one.where
        for item in items(passage.step):
            if isinstance(item, Use) and item.what == "material":
                here = passage.shown & reading.configurations.bits(item.when)
                for said in item.items:
                    where[said.text] = where.get(said.text, 0) | here
    for id, bits in where.items():
        if id not in brought:
            yield Supply(_named(reading, id), "", source, reading.when(bits, everywhere))


def _amount(reading: Reading, id: str, count: Decimal) -> Text:
    return reading.say.listed([_named(reading, id), text(reading.say.number(count))], "unit")


def _named(reading: Reading, id: str) -> Text:
    """A thing of the record with its reference, or a material of the list."""
    key = next(iter(reading.device.names.get(id, ())), None)
    if key is None:
        return text(reading.tool(id))
    mark = text(reading.labels.of(key), Mark.REFERENCE)
    return joined([mark, text(reading.name(key))], "\u00a0")
