"""The kits that a guide names: the option that their forms are, and the packing that they bring along."""

from collections.abc import Iterable, Sequence
from dataclasses import replace

from guidebuild.device.condition import Condition, Is
from guidebuild.device.kit import Form, Kit
from guidebuild.device.option import Option, Origin, Value
from guidebuild.device.record import Device
from guidebuild.device.states import Kind, State
from guidebuild.device.things import Part
from guidebuild.guide.guide import KitUse
from guidebuild.source.said import Said
from guidebuild.source.span import Span

SUPPLIED = "supplied"


def uses(kits: Sequence[tuple[Kit, Span]]) -> tuple[KitUse, ...]:
    """Each kit with its option: `supplied`, or the kit's id where two have forms."""
    with_forms = sum(len(kit.forms) > 1 for kit, _ in kits)
    return tuple(
        KitUse(kit, _option(kit, with_forms) if len(kit.forms) > 1 else None, named)
        for kit, named in kits
    )


def _option(kit: Kit, with_forms: int) -> str:
    return SUPPLIED if with_forms == 1 else kit.id


def kit_options(found: Iterable[KitUse]) -> tuple[Option, ...]:
    """One option for each kit that has forms; it asks for the form in which the kit came."""
    return tuple(
        Option(
            id=use.option,
            ask=use.kit.name,
            values=tuple(
                Value(form.id, form.name or Said(form.id, form.span)) for form in use.kit.forms
            ),
            origin=Origin.KIT,
            span=use.kit.span,
        )
        for use in found
        if use.option is not None
    )


def with_packing(device: Device, found: Iterable[KitUse]) -> Device:
    """The device with what comes on the new units and must be off them at the end."""
    packing: dict[str, Part] = {}
    for use in found:
        for form in use.kit.forms:
            when = None if use.option is None else _is(use.option, form)
            for id_, name in (*form.take_off.items(),):
                packing[id_] = _packing(id_, name, use.kit, _either(packing.get(id_), when))
        for id_, name in use.kit.take_off.items():
            packing[id_] = _packing(id_, name, use.kit, None)
    new = {id_: part for id_, part in packing.items() if id_ not in device.names}
    if not new:
        return device
    names = {**device.names, **{id_: (id_,) for id_ in new}}
    return replace(device, things={**device.things, **new}, names=names)


def _is(option: str, form: Form) -> Is:
    return Is(option, frozenset({form.id}), form.span)


def _either(known: Part | None, when: Is | None) -> Condition | None:
    """The forms that bring the same packing, as one condition."""
    if known is None or when is None or not isinstance(known.when, Is):
        return when
    if known.when.option != when.option:
        return when
    return replace(when, values=when.values | known.when.values)


def _packing(id_: str, name: Said, kit: Kit, when: Condition | None) -> Part:
    return Part(
        key=id_,
        id=id_,
        span=name.span,
        kind=Kind.PART,
        name=name,
        when=when,
        host=kit.brings[0] if kit.brings else None,
        starts=State.ABSENT,
        packing=True,
    )
