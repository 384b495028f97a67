"""Every output, found by its folder's (or file's) name: it makes files of proved guides."""

import pkgutil
from collections.abc import Callable, Iterable, Iterator, Mapping
from importlib import import_module
from importlib.util import find_spec
from pathlib import PurePosixPath
from types import ModuleType
from typing import Any

from guidebuild.guide.settings import Settings
from guidebuild.outputs.made import Listed, Made

ROOM = "guidebuild.outputs"
Maker = Callable[[Any, Any, Any, Any], Mapping[str, bytes]]


def modules() -> Iterator[tuple[str, ModuleType]]:
    """Each output's name and what has its `make_site`: `<name>.py`, or `<name>/site.py`."""
    for module in sorted(pkgutil.iter_modules(import_module(ROOM).__path__)):
        name = f"{ROOM}.{module.name}"
        if module.ispkg and find_spec(f"{name}.site"):
            name = f"{name}.site"
        found = import_module(name)
        if hasattr(found, "make_site"):
            yield module.name, found


def makers() -> Iterator[tuple[str, Maker]]:
    """Each output's name and its `make_site`."""
    for name, module in modules():
        yield name, module.make_site


def in_part(
    module: ModuleType, content: Any, proofs: Any, load: Any, others: Any, elsewhere: Any
) -> Made:
    """What an output makes of a part's guides; one that lists nothing over all guides has no `make_pages`."""
    if hasattr(module, "make_pages"):
        made: Made = module.make_pages(content, proofs, load, others, elsewhere)
        return made
    return Made(module.make_site(content, proofs, load, others), {})


def lists(settings: Settings, listed: Mapping[str, Listed]) -> dict[str, bytes]:
    """What every output says of all guides together; `listed` by output."""
    found: dict[str, bytes] = {}
    for name, module in modules():
        if hasattr(module, "make_lists"):
            found |= module.make_lists(settings, listed[name])
    return found


def merged(made: Iterable[tuple[str, Mapping[str, bytes]]]) -> dict[str, bytes]:
    """All outputs' files in one site; two that write the same path are a mistake of ours."""
    files: dict[str, bytes] = {}
    for name, mapping in made:
        for path, data in mapping.items():
            if not safe(path):
                raise ValueError(f"the output {name} would write {path!r}, outside of the site")
            if files.setdefault(path, data) != data:
                raise ValueError(f"the output {name} would write {path!r}, as another does")
    return files


def safe(path: str) -> bool:
    """Whether a path stays in the folder that it is relative to."""
    pure = PurePosixPath(path)
    return bool(pure.parts) and not pure.is_absolute() and ".." not in pure.parts
