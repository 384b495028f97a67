"""The views of a device's record, read once from the author's drawings."""

from collections.abc import Callable, Mapping, Sequence
from posixpath import join

from guidebuild.device.record import Device
from guidebuild.draw.limits import drawing_refused
from guidebuild.draw.view import Drawn, read_view
from guidebuild.proof.proof import Proof

Load = Callable[[str], bytes | None]  # a file of the content folder by its path there
SeenAs = tuple[str, frozenset[str]]


def seen_as(device: Device) -> SeenAs:
    """What a view's layers depend on: a guide may bring packing to a device, and models of its own."""
    return device.id, frozenset(device.names)


def views_of(proofs: Sequence[Proof], load: Load) -> dict[SeenAs, Mapping[str, Drawn]]:
    """The views of all guides' devices, each read once."""
    found: dict[SeenAs, Mapping[str, Drawn]] = {}
    for proof in proofs:
        seen = seen_as(proof.device)
        if seen not in found:
            found[seen] = views(proof.device, load)
    return found


def views(device: Device, load: Load) -> dict[str, Drawn]:
    """By id; a view whose file is not there, or too much for a page, is left out (it was told)."""
    found = {}
    for id, view in device.views.items():
        if view.file is None:
            found[id] = read_view(device, view, None)
            continue
        data = load(join(device.folder, view.file.text))
        text = data.decode("utf-8", "replace") if data is not None else None
        if text is not None and not drawing_refused(text):
            found[id] = read_view(device, view, text)
    return found
