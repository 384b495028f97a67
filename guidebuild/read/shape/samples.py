"""Pieces of the commented samples in `schema/samples`: they are read in the tests, so none can be wrong."""

import re
from functools import cache

from guidebuild.shipped import shipped


def of_file(name: str) -> str:
    """A whole sample; of a guide, what stands before its first heading."""
    if name == "guide":
        return _text("guide.md").partition("\n# ")[0].rstrip()
    return _text(f"{name}.yaml").rstrip()


def of_block(name: str) -> str:
    """The first block of this name, with its fence."""
    found = re.search(rf"^```{name}\n.*?^```$", _text("guide.md"), re.MULTILINE | re.DOTALL)
    return found[0] if found else ""


def of_section(name: str) -> str:
    """A section of the record, as far as its lines are indented."""
    found = re.search(rf"^{name}:.*\n(?:[ \t]+.*\n)*", _text("device.yaml"), re.MULTILINE)
    return found[0].rstrip() if found else ""


@cache
def _text(file: str) -> str:
    return (shipped("schema") / "samples" / file).read_text(encoding="utf-8")
