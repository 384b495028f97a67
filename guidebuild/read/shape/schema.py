"""The schemas as they lie in `schema/`, loaded once, with their references followed."""

import json
import posixpath
from functools import cache
from pathlib import Path
from typing import Any, TypeAlias

from guidebuild.shipped import shipped

Schema: TypeAlias = dict[str, Any]


@cache
def document(name: str) -> Schema:
    """A schema by its file name without the ending: `device`, `blocks/part`."""
    loaded: Schema = json.loads((_folder() / f"{name}.schema.json").read_text(encoding="utf-8"))
    return loaded


@cache
def block_names() -> tuple[str, ...]:
    """The names of all typed blocks: one schema file each."""
    found = (_folder() / "blocks").glob("*.schema.json")
    return tuple(sorted(path.name.removesuffix(".schema.json") for path in found))


def _folder() -> Path:
    return shipped("schema")


def follow(ref: str, inside: str) -> tuple[Schema, str]:
    """What a `$ref` in the document `inside` leads to, and the document that it stands in."""
    path, _, pointer = ref.partition("#")
    name = inside
    if path:
        there = posixpath.normpath(posixpath.join(posixpath.dirname(inside), path))
        name = there.removesuffix(".schema.json")
    found: Any = document(name)
    for step in filter(None, pointer.split("/")):
        found = found[step]
    return found, name
