"""Imports go down only, rooms on one floor leave each other alone, and nothing goes round in a circle."""

from graphlib import CycleError, TopologicalSorter

import pytest

from tests.repo.tree import imports, modules

FLOORS = (
    ("source",),
    ("device",),
    ("guide",),
    ("proof",),
    ("read", "rules", "translate", "draw"),
    ("outputs", "reports", "handover", "plan"),
    ("build",),
    ("cli",),
)
FLOOR = {room: number for number, rooms in enumerate(FLOORS) for room in rooms}

# Who may touch what comes from outside.
ONLY_IN = {
    "markdown_it": {"read"},
    "yaml": {"read"},
    "jsonschema": {"read"},
    "PIL": {"draw"},
    "jinja2": {"outputs"},
}


def room(module: str) -> str:
    """`guidebuild.device.things` -> `device`; the package's own top files have none."""
    parts = module.split(".")
    return parts[1] if len(parts) > 1 and parts[1] in FLOOR else ""


def test_every_folder_of_the_package_is_a_room() -> None:
    folders = {name.split(".")[1] for name in modules() if name.count(".") > 1}
    assert folders <= FLOOR.keys()


@pytest.mark.parametrize("module", [name for name in modules() if room(name)])
def test_imports_go_down_only(module: str) -> None:
    for other in imports(module):
        if not other.startswith("guidebuild.") or not room(other) or room(other) == room(module):
            continue
        assert FLOOR[room(other)] < FLOOR[room(module)], f"{module} imports {other}"


def test_no_import_goes_round_in_a_circle() -> None:
    ours = {name: imports(name) & modules().keys() - {name} for name in modules()}
    try:
        list(TopologicalSorter(ours).static_order())
    except CycleError as circle:
        raise AssertionError(" -> ".join(circle.args[1])) from None


@pytest.mark.parametrize("library", ONLY_IN)
def test_a_library_is_imported_in_its_room_only(library: str) -> None:
    rooms = {
        room(name) for name in modules() if any(i.split(".")[0] == library for i in imports(name))
    }
    assert rooms <= ONLY_IN[library]


DISK = {"os", "pathlib", "shutil", "tempfile", "subprocess"}
MAY_TOUCH_DISK = {"read", "build", "handover", "cli", ""}
READS_WHAT_SHIPS = {
    "guidebuild.outputs.html.assets"
}  # the theme's files, which come with guidebuild


@pytest.mark.parametrize("module", list(modules()))
def test_only_four_rooms_touch_the_disk(module: str) -> None:
    if room(module) in MAY_TOUCH_DISK or module in READS_WHAT_SHIPS:
        return
    assert (
        not {name if name == "pathlib.pure" else name.split(".")[0] for name in imports(module)}
        & DISK
    )
