"""Screws of a step that are easily mixed up, side by side."""

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from itertools import combinations

from guidebuild.draw.alike import Lookalike, alike_scale, alike_svg
from guidebuild.outputs.html.page.acts.line import Line
from guidebuild.outputs.html.page.labels import Numbered
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.screw_words import size_words
from guidebuild.proof.questions.alike import differ_only_in_length
from guidebuild.translate.messages.text import Mark, Text, text


@dataclass(frozen=True, slots=True)
class Likes:
    """`title` names them, `caption` says in which they differ."""

    numbers: tuple[str, ...]
    title: Text
    caption: Text
    svg: str
    kind: str = "likes"


def likes(reading: Reading, lines: Iterable[Line]) -> Likes | None:
    """The strip of the screws among these lines that differ only in length; None where there are none."""
    there = {number for line in lines for number in line.references}
    screws = [one for one in reading.labels.screws if one.number in there]
    mixed = [
        one
        for one in screws
        if any(differ_only_in_length(one.screw, two.screw) for two in screws if two is not one)
    ]
    return _strip(reading, mixed) if mixed else None


def _strip(reading: Reading, mixed: list[Numbered]) -> Likes:
    say = reading.say
    numbers = [text(one.number, Mark.REFERENCE) for one in mixed]
    sizes = say.listed([size_words(say, one.screw) for one in mixed])
    lengths = [one.screw.length or Decimal(0) for one in mixed]
    differences = (abs(two - one) for one, two in combinations(lengths, 2))
    smallest = min(filter(None, differences), default=None)
    shown = [Lookalike(one.number, one.screw) for one in mixed]
    scale = str(alike_scale(shown))
    caption = say("alike.caption", sizes=sizes, scale=scale)
    if smallest is not None:
        difference = say.quantity(smallest.normalize(), "mm")
        caption = say("alike.caption-by", sizes=sizes, difference=difference, scale=scale)
    return Likes(
        numbers=tuple(one.number for one in mixed),
        title=say("alike.title", numbers=say.listed(numbers)),
        caption=caption,
        svg=alike_svg(
            shown,
            say.plain("alike.drawing", numbers=say.listed(numbers), sizes=sizes, scale=scale),
            say.figure,
        ),
    )
