"""A kit and its forms."""

from guidebuild.device.kit import Amount, Form, Kit
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said


def kit(entry: Entry) -> Kit | None:
    """The kit that a file says; None where it has no id."""
    id_ = entry.said("kit")
    if id_ is None:
        return None
    return Kit(
        id=id_.text,
        name=entry.said("name") or id_,
        span=id_.span,
        brings=entry.all_said("brings"),
        forms=_forms(entry, id_),
        materials=_materials(entry),
        tools=entry.all_said("tools"),
        take_off=entry.entries("take-off"),
        inspect=entry.all_said("inspect"),
        replaced_by=entry.said("replaced-by"),
        until=entry.said("until"),
        from_batch=entry.said("from-batch"),
    )


def _forms(entry: Entry, id_: Said) -> tuple[Form, ...]:
    """Its forms; a kit sold in one form is its own, with an empty id."""
    forms = entry.entry("forms")
    if forms is None or not forms.marks:
        return (_form(Said("", id_.span), entry, alone=True),)
    names = map(forms.key, forms.marks)
    return tuple(_form(name, forms.values.get(name.text) or Entry(name.span)) for name in names)


def _form(id_: Said, entry: Entry, alone: bool = False) -> Form:
    return Form(
        id=id_.text,
        name=None if alone else entry.said("name"),
        part_number=entry.said("part-number"),
        arrives_with=entry.all_said("arrives-with"),
        materials=() if alone else _materials(entry),
        tools=() if alone else entry.all_said("tools"),
        take_off={} if alone else entry.entries("take-off"),
        span=id_.span,
    )


def _materials(entry: Entry) -> tuple[Amount, ...]:
    inside = entry.entry("materials")
    if inside is None:
        return ()
    return tuple(Amount(id_, count) for id_, count in inside.each())
