"""One device out of the records of several models: what is equal once, what differs once for each."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from typing import TypeVar

from guidebuild.device.condition import Both, Condition, Is
from guidebuild.device.option import Option, Origin, Value
from guidebuild.device.record import Device, Group
from guidebuild.device.things import Thing
from guidebuild.source.said import Said
from guidebuild.source.span import Span

MODEL = "model"  # the id of the option
V = TypeVar("V")


def model_option(devices: Sequence[Device], span: Span) -> Option:
    """Which of the models it is."""
    values = tuple(Value(one.id, one.name) for one in devices)
    return Option(MODEL, Said(MODEL, span), values, Origin.MODEL, span)


def joined(devices: Sequence[Device], named: Span) -> Device:
    """The models as one device; `named` is where the guide names them.

    An entry that is equal in all its models is one thing. Where records differ there is one for each form,
    its key `id@model`. The base is always one: everything is finally fitted to it.
    """
    first = devices[0]
    things, keys = _things(devices, named)
    return replace(
        first,
        id="+".join(one.id for one in devices),
        things=things,
        names=_names(devices, keys),
        groups=_groups(devices, keys),
        options=_options(devices),
        functions=_first_of(one.functions for one in devices),
        hazards=_first_of(one.hazards for one in devices),
        pictures=_first_of(one.pictures for one in devices),
        views=_first_of(one.views for one in devices),
        exclude=_exclude(devices, named),
    )


def _things(
    devices: Sequence[Device], named: Span
) -> tuple[dict[str, Thing], dict[tuple[str, str], str]]:
    """All things by key, and the key of (model, id as in its record)."""
    things: dict[str, Thing] = {}
    keys: dict[tuple[str, str], str] = {}
    for id_ in dict.fromkeys(key for one in devices for key in one.things):
        for models in _alike(devices, id_):
            alone = len(models) == sum(id_ in one.things for one in devices)
            key = id_ if alone else f"{id_}@{models[0].id}"
            thing = models[0].things[id_]
            keys.update({(model.id, id_): key for model in models})
            if len(models) < len(devices):
                thing = replace(thing, key=key, when=_and(_in(models, named), thing.when))
            things[key] = thing
    return things, keys


def _alike(devices: Sequence[Device], id_: str) -> list[list[Device]]:
    """The models that have this id, in groups within which their entries are equal."""
    groups: list[list[Device]] = []
    for device in devices:
        thing = device.things.get(id_)
        if thing is None:
            continue
        for group in groups:
            if group[0].things[id_] == thing or id_ == group[0].base == device.base:
                group.append(device)
                break
        else:
            groups.append([device])
    return groups


def _in(models: Iterable[Device], named: Span) -> Condition:
    return Is(MODEL, frozenset(one.id for one in models), named)


def _and(first: Condition, second: Condition | None) -> Condition:
    return first if second is None else Both((first, second))


def _names(
    devices: Sequence[Device], keys: Mapping[tuple[str, str], str]
) -> dict[str, tuple[str, ...]]:
    names: dict[str, dict[str, None]] = {}
    for device in devices:
        for id_, own in device.names.items():
            names.setdefault(id_, {}).update((keys[device.id, key], None) for key in own)
    return {id_: tuple(found) for id_, found in names.items()}


def _groups(devices: Sequence[Device], keys: Mapping[tuple[str, str], str]) -> dict[str, Group]:
    groups: dict[str, Group] = {}
    for device in devices:
        for id_, group in device.groups.items():
            own = tuple(keys[device.id, key] for key in group.holes)
            known = groups.get(id_)
            holes = own if known is None else tuple(dict.fromkeys((*known.holes, *own)))
            groups[id_] = replace(known or group, holes=holes)
    return groups


def _options(devices: Sequence[Device]) -> tuple[Option, ...]:
    options: dict[str, Option] = {}
    for device in devices:
        for option in device.options:
            known = options.get(option.id)
            values = {value.id: value for value in (known.values if known else ())}
            values.update({v.id: v for v in option.values if v.id not in values})
            options[option.id] = replace(known or option, values=tuple(values.values()))
    return tuple(options.values())


def _exclude(devices: Sequence[Device], named: Span) -> tuple[Condition, ...]:
    """What a record excludes, in its models only; and answers that a model does not know."""
    found: list[Condition] = []
    for device in devices:
        of_model = _in([device], named)
        found += [_and(of_model, one) for one in device.exclude]
        for option in _options(devices):
            own = next((one.values for one in device.options if one.id == option.id), None)
            if own is not None:
                strange = {value.id for value in option.values} - {value.id for value in own}
                if strange:
                    found.append(Both((of_model, Is(option.id, frozenset(strange), named))))
    return tuple(found)


def _first_of(maps: Iterable[Mapping[str, V]]) -> dict[str, V]:
    together: dict[str, V] = {}
    for one in maps:
        together = {**one, **together}
    return together
