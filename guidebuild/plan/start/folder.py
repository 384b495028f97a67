"""The files that a content folder needs before its first record."""

from collections.abc import Iterable

from guidebuild.device.drivers import family
from guidebuild.plan.draft.markdown import flow

_WORDS = {"TX": "hexalobular", "PH": "cross recess", "PZ": "cross recess", "slot": "slotted"}


def settings(publisher: str) -> str:
    """guidebuild.yaml."""
    return f"""\
# What holds for this whole content folder.
publisher: {flow(publisher, inside=False)}
# help-line: "+44 1632 960000"         # told where a guide gives up; in quotes, as a + or 0 leads
languages: [en]                        # the first is the one that you write
theme: sheet
rules:                                 # how loud a rule is: off, note, warning, error
  picture-missing: {{draft: off}}        # pictures come when the words stand
"""


def tools(lines: Iterable[str]) -> str:
    """tools.yaml of these entries."""
    head = "# Tools and materials that the guides name. `basic: true`: every bench has it, no kit brings it."
    return "\n".join([head, *lines]) + "\n"


def entries(drives: Iterable[str], others: Iterable[tuple[str, str]]) -> list[str]:
    """A driver for each drive, and other tools as (id, name): a line each."""
    lines = [_driver(drive) for drive in dict.fromkeys(drives)]
    return lines + [f"{id_}: {{name: {flow(name)}, basic: true}}" for id_, name in others]


def _driver(drive: str) -> str:
    """A hexagon socket takes a key; everything else a screwdriver."""
    id_ = "".join(char if char.isalnum() else "-" for char in drive.lower()).strip("-")
    if family(drive) == "hex":
        called = f"Hexagon key{drive.removeprefix('hex')}"
        return f"{id_}-key: {{name: {flow(called)}, fits: {flow(drive)}, basic: true}}"
    said = (
        f"{id_}-driver: {{name: {flow(f'Screwdriver {drive}')}, fits: {flow(drive)}, basic: true}}"
    )
    kind = _WORDS.get(family(drive), "")
    return f"{said}  # {kind}" if kind else said
