"""The names and warnings of a device record, and of kits."""

from collections.abc import Mapping
from dataclasses import replace

from guidebuild.device.kit import Form, Kit
from guidebuild.device.option import Option
from guidebuild.device.record import Device, Hazard, Identify
from guidebuild.device.things import Thing
from guidebuild.source.said import Said
from guidebuild.translate.segments.segment import Weight
from guidebuild.translate.segments.slots import Slots


def device_texts(device: Device, slots: Slots) -> Device:
    """The record with every text as the walk's `translate` gives it; each in the file that it stands in."""
    _enter(slots, device.name, "")
    told = replace(
        device, name=slots.said(device.name, "name"), identify=_identify(device.identify, slots)
    )
    return replace(
        told,
        options=tuple(_enter_option(one, slots) for one in device.options),
        things={key: _thing(thing, slots) for key, thing in device.things.items()},
        groups={
            key: replace(group, name=_named(group.name, group.id, slots))
            for key, group in device.groups.items()
        },
        functions=_names(device.functions, slots),
        hazards={key: _hazard(hazard, slots) for key, hazard in device.hazards.items()},
        views={
            key: replace(view, name=_named(view.name, key, slots))
            for key, view in device.views.items()
        },
    )


def kit_texts(kit: Kit, slots: Slots) -> Kit:
    """A kit with its texts translated."""
    _enter(slots, kit.name, "")
    return replace(
        kit,
        name=slots.said(kit.name, "name"),
        inspect=slots.all(kit.inspect, "inspect"),
        forms=tuple(_form(form, slots) for form in kit.forms),
        take_off=_names(kit.take_off, slots),
    )


def option(one: Option, slots: Slots) -> Option:
    """A question and its answers."""
    before, slots.place = slots.place, one.id
    values = tuple(
        replace(value, label=slots.said(value.label, f"answer.{value.id}")) for value in one.values
    )
    told = replace(one, ask=slots.said(one.ask, "ask"), values=values)
    slots.place = before
    return told


def _enter(slots: Slots, said: Said, place: str) -> None:
    slots.file, slots.place, slots.notes = said.span.source.path, place, ()


def _enter_option(one: Option, slots: Slots) -> Option:
    _enter(slots, one.ask, "")
    return option(one, slots)


def _named(name: Said | None, place: str, slots: Slots) -> Said | None:
    if name is None:
        return None
    _enter(slots, name, place)
    return slots.said(name, "name")


def _names(names: Mapping[str, Said], slots: Slots) -> dict[str, Said]:
    return {key: _named(name, key, slots) or name for key, name in names.items()}


def _thing(thing: Thing, slots: Slots) -> Thing:
    told = replace(thing, name=_named(thing.name, thing.id, slots))
    if told.note is None:
        return told
    _enter(slots, told.note, thing.id)
    return replace(told, note=slots.said(told.note, "note"))


def _identify(identify: Identify | None, slots: Slots) -> Identify | None:
    if identify is None:
        return None
    slots.place = "identify"
    told = replace(identify, expect=slots.said(identify.expect, "expect"))
    slots.place = ""
    return told


def _hazard(hazard: Hazard, slots: Slots) -> Hazard:
    _enter(slots, hazard.hazard, hazard.id)
    slots.weight, slots.signal = Weight.CAUTION, hazard.level
    told = replace(
        hazard,
        hazard=slots.said(hazard.hazard, "hazard"),
        result=slots.maybe(hazard.result, "result"),
        avoid=slots.all(hazard.avoid, "avoid"),
    )
    slots.weight, slots.signal = Weight.TEXT, ""
    return told


def _form(form: Form, slots: Slots) -> Form:
    if form.name is None:
        return form
    slots.place = form.id
    told = replace(form, name=slots.said(form.name, "name"), take_off=_names(form.take_off, slots))
    slots.place = ""
    return told
