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
from guidebuild.plan.draft.markdown import markdown
from guidebuild.read.content import read_content


@dataclass(frozen=True, slots=True)
class Asked:
    """As the command line has it; `kits` None means all that bring the part."""

    device: str
    part: str
    goal: str = "replace"
    kits: tuple[str, ...] | None = None
    form: str = ""


def drafted(root: Path, asked: Asked) -> tuple[str, str, Drafted]:
    """Where the guide belongs in the content folder, its text, and what it costs; Trouble says what is wrong."""
    content, _ = read_content(root)
    device = device_of(content, asked.device)
    part = _part(device, asked.part)
    kits = _kits(content, device, part, asked)
    wish = Wish(asked.goal, part.key, kits, _form(kits, asked.form))
    found = draft(device, guides_of(content, device.id), wish)
    if found is None:
        raise Trouble(
            f"The record of {device.id} leaves no way to {part.id}: something holds, hides or guards it "
            "that can't be opened before it."
        )
    path = f"guides/{device.id}/{_slug(found)}.md"
    return path, markdown(found.script), found


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


def _kits(content: Content, device: Device, part: Part, asked: Asked) -> tuple[Kit, ...]:
    if asked.kits is not None:
        for id_ in asked.kits:
            if id_ not in content.kits:
                raise Trouble(f"There is no kit {id_}. {_known(content.kits)}")
        return tuple(content.kits[id_] for id_ in asked.kits)
    if asked.goal != "replace":
        return ()
    return tuple(
        kit
        for kit in content.kits.values()
        if any(said.text == part.id for said in kit.brings) and kit.replaced_by is None
    )[:1]


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
