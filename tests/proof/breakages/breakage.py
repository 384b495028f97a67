"""One deliberate mistake in the code of the proof, made in memory only."""

import importlib
import importlib.util
import sys
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from importlib.machinery import ModuleSpec
from pathlib import Path
from types import ModuleType

# Loaded anew with each breakage: the proof and all that it stands on but the models, and what looks at its results.
ANEW = (
    "guidebuild.proof",
    "guidebuild.guide.configurations",
    "guidebuild.guide.merging",
    "guidebuild.guide.numbering",
    "guidebuild.guide.telling",
    "guidebuild.guide.boxes",
    "guidebuild.guide.smearing",
    "guidebuild.guide.asked",
    "guidebuild.device.between",
    "guidebuild.device.covers",
    "guidebuild.device.ends",
    "guidebuild.device.guarding",
    "guidebuild.device.hosts",
    "guidebuild.device.layout",
    "guidebuild.device.place",
    "guidebuild.device.presence",
    "guidebuild.device.stores",
    "tests.proof.fuzz.compare",
    "tests.proof.fuzz.told",
    "tests.proof.fuzz.answers",
    "tests.proof.fuzz.retold",
)


@dataclass(frozen=True)
class Breakage:
    """In `module` (of guidebuild) the text `before`, which stands there once, becomes `after`."""

    what: str
    module: str
    before: str
    after: str

    @property
    def name(self) -> str:
        """The whole name of the module."""
        return f"guidebuild.{self.module}"

    def source(self) -> str:
        """The module's text, broken."""
        spec = importlib.util.find_spec(self.name)
        assert spec is not None and spec.origin is not None
        text = Path(spec.origin).read_text(encoding="utf-8")
        assert text.count(self.before) == 1, (
            f"{self.before!r} stands {text.count(self.before)} times"
        )
        return text.replace(self.before, self.after)


class _Loader:
    """Hands out one module from its broken source."""

    def __init__(self, breakage: Breakage) -> None:
        self.name = breakage.name
        self.code = compile(breakage.source(), f"<{breakage.what}>", "exec", dont_inherit=True)

    def find_spec(self, name: str, path: object = None, target: object = None) -> ModuleSpec | None:
        """The import system asks every finder."""
        return importlib.util.spec_from_loader(name, self) if name == self.name else None  # type: ignore[arg-type]

    def create_module(self, spec: ModuleSpec) -> None:
        """As usual."""

    def exec_module(self, module: ModuleType) -> None:
        """The broken code instead of the file's."""
        exec(self.code, module.__dict__)


@contextmanager
def broken(breakage: Breakage) -> Iterator[ModuleType]:
    """The module that compares, with this breakage below it; afterwards all is as it was."""
    loader = _Loader(breakage)
    kept = {name: module for name, module in sys.modules.items() if name.startswith(ANEW)}
    _forget(kept)
    sys.meta_path.insert(0, loader)
    try:
        yield importlib.import_module("tests.proof.fuzz.compare")
    finally:
        sys.meta_path.remove(loader)
        _forget([name for name in sys.modules if name.startswith(ANEW)])
        sys.modules.update(kept)


def _forget(names: Iterable[str]) -> None:
    for name in list(names):
        del sys.modules[name]
