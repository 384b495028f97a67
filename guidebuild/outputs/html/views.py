"""The views of a device's record, read once from the author's drawings."""

from collections.abc import Callable
from posixpath import join

from guidebuild.device.record import Device
from guidebuild.draw.view import Drawn, read_view

Load = Callable[[str], bytes | None]  # a file of the content folder by its path there


def views(device: Device, load: Load) -> dict[str, Drawn]:
    """By id; a view whose file is not there is left out (the reader has told it)."""
    found = {}
    for id, view in device.views.items():
        if view.file is None:
            found[id] = read_view(device, view, None)
            continue
        data = load(join(device.folder, view.file.text))
        if data is not None:
            found[id] = read_view(device, view, data.decode("utf-8", "replace"))
    return found
