"""A random kit: what it brings, in which forms, with what packed on it."""

from dataclasses import replace

from guidebuild.device.condition import Is
from guidebuild.device.kit import Form, Kit
from guidebuild.device.option import Option, Origin
from guidebuild.device.record import Device
from guidebuild.device.states import Kind, State
from guidebuild.device.things import Link, Part
from guidebuild.guide.guide import KitUse
from tests.proof.fuzz.dice import Dice
from tests.proof.fuzz.ink import Ink
from tests.proof.fuzz.options import option


def kit(dice: Dice, ink: Ink, device: Device) -> tuple[KitUse, Device, list[Option]]:
    """A kit for one part, the device with its packing, and the option that its forms are."""
    movable = [part.key for part in device.parts if part.host is not None]
    brought = dice.pick(movable)
    names = ["bare", "complete"][: dice.number(1, 2)]
    asked = len(names) > 1
    things, ids = dict(device.things), dict(device.names)
    forms = []
    for name in names:
        forms.append(_form(dice, ink, device, brought, name if asked else ""))
        if dice.often(25):
            key = f"film-{name}"
            things[key] = _packing(ink, key, brought, name if asked else None)
            ids[key] = (key,)
    whole = Kit(
        "kit", ink.said("kit"), ink.span(), ink.words([brought]), tuple(forms), (), (), {}, ()
    )
    options = [option(ink, "supplied", names, Origin.KIT)] if asked else []
    use = KitUse(whole, "supplied" if asked else None, ink.span())
    return use, replace(device, things=things, names=ids), options


def _form(dice: Dice, ink: Ink, device: Device, brought: str, name: str) -> Form:
    """It may bring parts on the new unit, and links there."""
    listed = []
    for key, thing in device.things.items():
        match thing:
            case Part(host=host) if host is not None and _on(device, key, brought):
                if dice.often(60):
                    listed.append(key)
            case Link() if any(
                end.text == brought or _on(device, end.text, brought) for end in thing.ends
            ):
                if dice.often(35):
                    listed.append(key)
            case _:
                if dice.often(2):
                    listed.append(key)
    return Form(name, None, None, ink.words(listed), (), (), {}, ink.span())


def _on(device: Device, part: str, other: str) -> bool:
    seen = {part}
    while (host := device.part(part).host) is not None and host.text not in seen:
        part = host.text
        seen.add(part)
        if part == other:
            return True
    return False


def _packing(ink: Ink, key: str, brought: str, form: str | None) -> Part:
    when = None if form is None else Is("supplied", frozenset({form}), ink.span())
    return Part(
        key=key,
        id=key,
        span=ink.span(),
        kind=Kind.PART,
        host=ink.said(brought),
        packing=True,
        starts=State.ABSENT,
        when=when,
    )
