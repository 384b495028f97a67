"""What a guide can be found by: the things that it works on, what they do, and its title."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.things import Hole, Link
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move


@dataclass(frozen=True, slots=True)
class Found:
    """A word and the step (id, number) that it leads to; None where it leads to the whole guide."""

    words: str
    step: tuple[str, str] | None


def found_by(reading: Reading) -> tuple[Found, ...]:
    """Each thing with the steps of the main way that work on it, each function with what carries it."""
    found = [Found(reading.guide.title.text, None)]
    found += [Found(words, step) for words, step in dict.fromkeys(_things(reading))]
    return tuple(found)


def _things(reading: Reading) -> Iterator[tuple[str, tuple[str, str]]]:
    for passage in reading.proof.passages:
        step = (passage.step.id, reading.numbers.steps[passage.step.id])
        for one in passage.walked:
            if isinstance(one.doing, Move):
                for words in _words(reading, one.doing.thing):
                    yield words, step


def _words(reading: Reading, key: str) -> Iterator[str]:
    """Its name, the name of its group, and the functions that it carries."""
    thing = reading.device.things[key]
    if isinstance(thing, Hole):
        group = reading.device.groups.get(thing.group)
        if group is not None and group.name is not None:
            yield group.name.text
    elif thing.name is not None:
        yield thing.name.text
    if isinstance(thing, Link):
        for said in thing.carries:
            if said.text in reading.device.functions:
                yield reading.device.functions[said.text].text
