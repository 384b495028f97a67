"""Parts that are laid aside: where each comes off, and where it goes on again or is gone for good."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.acts import REPLACING, Verb
from guidebuild.device.things import Part
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.outputs.html.page.step_links import StepLinks
from guidebuild.outputs.html.page.when import When
from guidebuild.proof.mistake import Move
from guidebuild.translate.messages.text import Text

_ON = frozenset({Verb.REFIT, Verb.LOWER})


@dataclass(frozen=True, slots=True)
class Aside:
    """`back` is empty where it never goes on again: then `fate` says what becomes of it."""

    name: Text
    out: Text
    back: Text
    fate: Text
    when: When | None


def laid_aside(reading: Reading, steps: StepLinks) -> tuple[Aside, ...]:
    """Parts of the main way in the order in which they come off; packing is thrown away, not laid aside."""
    return tuple(
        _aside(reading, part, steps)
        for key in reading.labels.of_thing
        if isinstance(part := reading.device.things[key], Part) and not part.packing
        if any(verb is Verb.REMOVE for verb, _ in _moves(reading, key))
    )


def _aside(reading: Reading, part: Part, steps: StepLinks) -> Aside:
    moves = list(_moves(reading, part.key))
    old = any(verb in REPLACING for verb, _ in moves)
    name = reading.named(part.key)
    back = {} if old else {step: None for verb, step in moves if verb in _ON}
    where = reading.configurations.bits(part.when)
    return Aside(
        name=reading.say.listed([name, reading.say("tray.old")], "unit") if old else name,
        out=steps(_numbered(reading, {step: None for verb, step in moves if verb is Verb.REMOVE})),
        back=steps(_numbered(reading, back)),
        fate=() if back else _fate(reading, part),
        when=reading.when(where, reading.configurations.everywhere),
    )


def _fate(reading: Reading, part: Part) -> Text:
    if part.waste is None:
        return reading.say("tray.never")
    key = f"waste.{part.waste.text}"
    waste = reading.say.plain(key) if reading.say.has(key) else part.waste.text
    return reading.say("tray.waste", waste=waste)


def _moves(reading: Reading, key: str) -> Iterator[tuple[Verb, str]]:
    for passage in reading.proof.passages:
        if passage.stage.remedy is None:
            for one in passage.walked:
                if isinstance(one.doing, Move) and one.doing.thing == key:
                    yield one.doing.verb, passage.step.id


def _numbered(reading: Reading, steps: dict[str, None]) -> tuple[tuple[str, str], ...]:
    return tuple((id, reading.numbers.steps[id]) for id in steps)
