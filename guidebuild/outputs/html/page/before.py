"""What must be true before the work: data, charge, people, bench, and who may do it."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.outputs.html.page.reading import Reading
from guidebuild.translate.messages.text import Text, text


@dataclass(frozen=True, slots=True)
class Fact:
    """A label over a value."""

    label: Text
    value: Text


def before_facts(reading: Reading) -> tuple[Fact, ...]:
    """Only what the author said; the word `none` is said, too, but for data and charge where nothing can have them."""
    return tuple(_facts(reading))


def who_for(reading: Reading) -> Text:
    """The skill in words, and `only:` who."""
    guide, say = reading.guide, reading.say
    if guide.skill is None:
        return ()
    key = f"skill.{guide.skill.text}"
    skill = say(key) if say.has(key) else text(guide.skill.text)
    return say("skill.only", skill=skill, only=guide.only.text) if guide.only else skill


def _facts(reading: Reading) -> Iterator[Fact]:
    before, say = reading.guide.before, reading.say
    none = before.data is not None and before.data.text == "none"
    if before.data is not None and (reading.is_fed or not none):
        yield Fact(
            say("before.data"),
            say("before.data-none") if none else reading.author.words(before.data),
        )
    if before.charge_most is not None:
        most = say.quantity(before.charge_most, "%")
        yield Fact(say("before.charge"), say("range.at-most", limit=most))
    elif before.charge_said is not None:
        none = before.charge_said.text == "none"
        value = say("before.charge-none") if none else reading.author.words(before.charge_said)
        if reading.is_fed or not none:
            yield Fact(say("before.charge"), value)
    if before.people is not None:
        yield Fact(say("before.people"), text(say.number(before.people)))
    if before.bench:
        items = [reading.author.words(said) for said in before.bench]
        yield Fact(say("before.bench"), say.listed(items, "unit"))
