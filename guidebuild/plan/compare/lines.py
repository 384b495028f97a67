"""What a step says, a line for each act, check, caution and sentence, so that two steps can be told apart."""

from collections.abc import Iterator
from dataclasses import fields
from decimal import Decimal
from enum import Enum

from guidebuild.device.quantity import Quantity
from guidebuild.device.things import Torque
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.caution import Caution
from guidebuild.guide.blocks.check import Check, Fault, Measure
from guidebuild.guide.blocks.points import Points
from guidebuild.guide.blocks.use import Use
from guidebuild.guide.blocks.video import Video
from guidebuild.guide.blocks.wait import Wait
from guidebuild.guide.inside import items
from guidebuild.guide.prose import Bullets, Paragraph, Picture, Quote
from guidebuild.guide.step import Step
from guidebuild.plan.compare.conditions import written

_KEYS = {"with_": "with", "do_up": "do up", "if_not": "if not", "screw_from": "screw from"}


def lines(step: Step) -> Iterator[str]:
    """In the order of the step."""
    for item in items(step):
        match item:
            case Act():
                head = f"{item.verb.value} {_told(item.targets)}"
                yield head + _more(item, "kind", "verb", "targets")
            case Check():
                yield f"check: {item.expect}" + _more(item, "expect")
            case Caution():
                head = _told(item.hazards) or f"{_told(item.level)}: {_told(item.hazard)}"
                yield f"caution: {head}" + _more(item, "hazards", "level", "hazard")
            case Wait():
                yield f"wait {_told(item.time)}" + _more(item, "time")
            case Use():
                yield f"{item.what}: {_told(item.items)}" + _more(item, "what", "items")
            case Picture():
                yield f"the picture {item.file}: {item.alt}"
            case Points():
                yield "marks on the picture" + _more(item)
            case Video():
                yield "film" + _more(item)
            case Paragraph():
                yield f'"{item.text}"'
            case Bullets() | Quote():
                yield from _inner(item)


def _inner(prose: object) -> Iterator[str]:
    """The paragraphs of a list or a quotation."""
    if isinstance(prose, Paragraph):
        yield f'"{prose.text}"'
    elif isinstance(prose, tuple):
        for one in prose:
            yield from _inner(one)
    elif isinstance(prose, Bullets | Quote):
        for field in fields(prose):
            if field.compare:
                yield from _inner(getattr(prose, field.name))


def _more(block: object, *but: str) -> str:
    """All that a block says besides, key by key; `when` last."""
    said = []
    for field in fields(block):  # type: ignore[arg-type]
        value = getattr(block, field.name)
        if field.compare and field.name not in (*but, "when") and (words := _told(value)):
            key = _KEYS.get(field.name, field.name.replace("_", " "))
            said.append(key if value is True else f"{key} {words}")
    when = written(getattr(block, "when", None))
    return "".join(f"; {one}" for one in said) + (f" when {when}" if when else "")


def _told(value: object) -> str:
    match value:
        case None | False | ():
            return ""
        case tuple():
            return ", ".join(map(_told, value))
        case Quantity(number, unit):
            return f"{number} {unit}".strip()
        case Torque(figure, word):
            return _told(figure) or str(word)
        case Measure():
            limits = " to ".join(filter(None, (_told(value.least), _told(value.most))))
            return f"{value.quantity} {limits} {value.unit}".strip()
        case Fault(see, go):
            return f"{see}: {go}"
        case Enum():
            return str(value.value)
        case Decimal():
            return f"{value:f}"
        case _:
            return str(value)
