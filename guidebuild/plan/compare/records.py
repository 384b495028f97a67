"""Two records, told apart."""

from collections.abc import Iterator, Mapping

from guidebuild.device.naming import called
from guidebuild.device.record import POWER, Device, Hazard
from guidebuild.device.things import Hole, Thing
from guidebuild.plan.compare.change import Change
from guidebuild.plan.compare.hiding import hiding_changes
from guidebuild.plan.compare.things import thing_changes
from guidebuild.plan.draft.names import name, names, plural, title
from guidebuild.source.said import Said


def record_changes(one: Device, other: Device) -> list[Change]:
    """Every difference, in the order of the second record; what is gone comes last."""
    found = [*_base(one, other), *_options(one, other)]
    found += _joined(one, other, list(_things(one, other)))
    found += hiding_changes(one, other)
    found += _words("function", one.functions, other.functions)
    found += _hazards(one, other)
    return found


def _base(one: Device, other: Device) -> Iterator[Change]:
    if one.base != other.base:
        new = name(other, other.base)
        yield Change(
            f"Everything is fitted to the {new} instead of the {name(one, one.base)}.",
            frozenset({other.base}),
        )


def _options(one: Device, other: Device) -> Iterator[Change]:
    before = {option.id: [value.id for value in option.values] for option in one.options}
    after = {option.id: [value.id for value in option.values] for option in other.options}
    for id_ in dict.fromkeys((*before, *after)):
        if before.get(id_) != after.get(id_):
            answers = ", ".join(after.get(id_, ()))
            if id_ not in before:
                words = f"There is a new question, {id_}: {answers}."
            elif id_ not in after:
                words = f"The question {id_} is not asked any more."
            else:
                words = f"The question {id_} has other answers: {answers}."
            yield Change(words, frozenset({id_}))


def _things(one: Device, other: Device) -> Iterator[tuple[str, str]]:
    """Keys of either record with what is to be said of each."""
    for key, thing in other.things.items():
        if key not in one.things:
            yield key, "is new"
        elif key != POWER:
            for words in thing_changes(one, other, one.things[key], thing):
                yield key, words
    for key in one.things:
        if key not in other.things:
            yield key, "is gone"


def _joined(one: Device, other: Device, said: list[tuple[str, str]]) -> Iterator[Change]:
    """Screws of a group of which the same is to be said are said of together."""
    together: dict[tuple[str, str], list[str]] = {}
    for key, words in said:
        thing = (other if key in other.things else one).things[key]
        slot = thing.group if isinstance(thing, Hole) else key
        together.setdefault((slot, words), []).append(key)
    for (_, words), keys in together.items():
        device = other if keys[0] in other.things else one
        yield _change(device, [device.things[key] for key in keys], words)


def _change(device: Device, things: list[Thing], words: str) -> Change:
    first = things[0]
    ids = frozenset(thing.id for thing in things)
    if not isinstance(first, Hole):
        subject = called(device, first.key)
        return Change(f"{title(subject)} {_number(words, plural(subject))}.", ids)
    group = device.groups[first.group]
    all_of_it = len(things) == len(group.holes)
    which = (
        ""
        if all_of_it
        else f", hole {' and '.join(one.hole for one in things if isinstance(one, Hole))}"
    )
    subject = f"{title(names(device, [first.key]))}{which}"
    return Change(
        f"{subject}{',' if which else ''} {_number(words, plural(name(device, first.key)))}.", ids
    )


def _number(words: str, several: bool) -> str:
    """The verb of a predicate for several things."""
    if not several:
        return words
    verb, _, rest = words.partition(" ")
    verbs = {"is": "are", "has": "have", "does": "do", "may": "may", "can": "can", "must": "must"}
    return f"{verbs.get(verb, verb[:-1] if verb.endswith('s') else verb)} {rest}".strip()


def _words(what: str, one: Mapping[str, Said], other: Mapping[str, Said]) -> Iterator[Change]:
    for id_ in dict.fromkeys((*one, *other)):
        before, after = one.get(id_), other.get(id_)
        if before is None and after is not None:
            yield Change(f"The {what} {after} is new.", frozenset({id_}))
        elif after is None:
            yield Change(f"The {what} {before} is gone.", frozenset({id_}))
        elif before is not None and before.text != after.text:
            yield Change(f"The {what} {before} is called {after}.", frozenset({id_}))


def _hazards(one: Device, other: Device) -> Iterator[Change]:
    for id_ in dict.fromkeys((*one.hazards, *other.hazards)):
        before, after = one.hazards.get(id_), other.hazards.get(id_)
        if before is None and after is not None:
            yield Change(f"A hazard is new: {after.hazard}", _of_hazard(after))
        elif after is None and before is not None:
            yield Change(f"A hazard is gone: {before.hazard}", _of_hazard(before))
        elif before is not None and after is not None and _told(before) != _told(after):
            yield Change(
                f"A hazard is told otherwise: {after.hazard}",
                _of_hazard(before) | _of_hazard(after),
            )


def _told(hazard: Hazard) -> tuple[object, ...]:
    avoid = [said.text for said in hazard.avoid]
    handling = sorted(said.text for said in hazard.when_handling)
    return hazard.level, hazard.hazard.text, hazard.result and hazard.result.text, avoid, handling


def _of_hazard(hazard: Hazard) -> frozenset[str]:
    return frozenset({hazard.id, *(said.text for said in hazard.when_handling)})
