"""Drafts: from a content folder to a Markdown file that was not there before."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path

from guidebuild.build.trouble import Trouble
from guidebuild.device.kit import Kit
from guidebuild.device.record import Device
from guidebuild.device.things import Part
from guidebuild.guide.content import Content
from guidebuild.guide.guide import Guide
from guidebuild.plan.draft.draft import Drafted, Wish, draft
from guidebuild.plan.draft.goals import BRINGS
from guidebuild.plan.draft.markdown import markdown
from guidebuild.plan.draft.names import listed
from guidebuild.plan.stuck import circle
from guidebuild.read.content import read_content


@dataclass(frozen=True, slots=True)
class Asked:
    """As the command line has it: `part` and `more` of them; `kits` None means those that bring them."""

    device: str
    part: str
    goal: str = "replace"
    kits: tuple[str, ...] | None = None
    form: str = ""
    more: tuple[str, ...] = ()


def drafted(root: Path, asked: Asked) -> tuple[str, str, Drafted]:
    """Where the guide belongs in the content folder, its text, and what it costs; Trouble says what is wrong."""
    content, _ = read_content(root)
    device = device_of(content, asked.device)
    parts = [_part(device, one) for one in dict.fromkeys((asked.part, *asked.more))]
    if asked.goal == "add" and device.base in {part.id for part in parts}:
        raise Trouble(f"{device.base} is the base, to which all else is fitted: it can't be added.")
    kits = _kits(content, parts, asked)
    form = _form(kits, asked.form)
    wish = Wish(asked.goal, tuple(part.key for part in parts), kits, form)
    found = draft(device, guides_of(content, device.id), wish)
    if found is None:
        raise _no_way(device, parts)
    path = f"guides/{device.id}/{_slug(found)}.md"
    return path, markdown(found.script), found


def _no_way(device: Device, parts: Sequence[Part]) -> Trouble:
    """Which things of the record wait for one another."""
    them = listed([part.id for part in parts])
    for part in parts:
        round_ = circle(device, part.key)
        if round_:
            return Trouble(
                f"The record of {device.id} leaves no way to {them}, as it goes round in a circle: "
                f"{'; '.join(round_)}. Correct `behind`, `guards`, `in` or `at` of one of them."
            )
    return Trouble(
        f"The record of {device.id} leaves no way to {them}: something holds, hides or guards it "
        "that can't be opened before it."
    )


def put(target: Path, text: str, force: bool) -> None:
    """Write a file that was not there; Trouble where one is and nobody said `--force`."""
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        with target.open("w" if force else "x", encoding="utf-8", newline="\n") as file:
            file.write(text)
    except FileExistsError:
        raise Trouble(
            f"{target} is there already. Name another with --out, or say --force."
        ) from None
    except OSError as error:
        raise Trouble(f"Can't write {target}: {error.strerror}.") from error


def device_of(content: Content, id_: str) -> Device:
    """The record of this id; Trouble where it is not there or could not be read."""
    device = content.devices.get(id_)
    if device is None:
        raise Trouble(f"There is no device {id_} in this content folder. {_known(content.devices)}")
    return device


def guides_of(content: Content, device: str) -> list[Guide]:
    """The guides that are about this device and no other."""
    return [
        each.guide
        for each in content.guides
        if [said.text for said in each.guide.devices] == [device]
    ]


def _part(device: Device, id_: str) -> Part:
    for key in device.names.get(id_, ()):
        thing = device.things[key]
        if isinstance(thing, Part):
            return thing
    names = [part.id for part in device.parts]
    raise Trouble(f"The record of {device.id} has no part {id_}. {_known(names)}")


def _kits(content: Content, parts: Sequence[Part], asked: Asked) -> tuple[Kit, ...]:
    if asked.kits is not None:
        for id_ in asked.kits:
            if id_ not in content.kits:
                raise Trouble(f"There is no kit {id_}. {_known(content.kits)}")
        return tuple(content.kits[id_] for id_ in asked.kits)
    if asked.goal not in BRINGS or (asked.goal == "add" and _carry(content, parts, asked)):
        return ()
    found = {kit.id: kit for part in parts if (kit := _brings(content, part)) is not None}
    brought = {said.text for kit in found.values() for said in kit.brings}
    # A guide that names kits says that these bring all that it needs.
    return tuple(found.values()) if brought >= {part.id for part in parts} else ()


def _carry(content: Content, parts: Sequence[Part], asked: Asked) -> bool:
    """Whether something sits on them; a kit that brings a part alone does not bring all that is added with it."""
    hosts = {part.id for part in parts}
    others = (one for one in device_of(content, asked.device).parts if one.id not in hosts)
    return any(one.host is not None and one.host.text in hosts for one in others)


def _brings(content: Content, part: Part) -> Kit | None:
    """The first kit that is still sold and brings it."""
    return next(
        (
            kit
            for kit in content.kits.values()
            if any(said.text == part.id for said in kit.brings) and kit.replaced_by is None
        ),
        None,
    )


def _form(kits: Sequence[Kit], form: str) -> str:
    forms = [one.id for kit in kits for one in kit.forms if len(kit.forms) > 1]
    if form and form not in forms:
        raise Trouble(f"No kit of this guide has a form {form}. {_known(forms)}")
    return form


def _slug(found: Drafted) -> str:
    title = str(found.script.front["title"]).lower()
    return "-".join("".join(c if c.isalnum() else " " for c in title).split())


def _known(names: Iterable[str]) -> str:
    known = ", ".join(names)
    return f"There are: {known}." if known else "There are none."
