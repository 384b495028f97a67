"""What came of a part as bytes, with the texts that its findings stand in: it is joined where no content lies."""

import pickle
from importlib import import_module
from io import BytesIO
from typing import Any

from guidebuild.build.cache.kept import MAY_BE_MADE
from guidebuild.source.text import Source

# All that may be made from a part: it comes from another machine, and nothing in it can run.
_ALLOWED = {
    **MAY_BE_MADE,
    "guidebuild.outputs.html.page.index": {"Found"},
    "guidebuild.outputs.html.page.start": {"GuideEntry"},
    "guidebuild.reports.parts.report": {"Fault"},
    "guidebuild.translate.messages.text": {"Age", "Mark", "Piece"},
}


class _Pickler(pickle.Pickler):
    """A source is written once, and named by its place among the sources."""

    def __init__(self, out: BytesIO) -> None:
        super().__init__(out, protocol=5)
        self.sources: dict[Source, int] = {}  # sources are told apart by identity

    def persistent_id(self, obj: Any) -> int | None:
        return self.sources.setdefault(obj, len(self.sources)) if type(obj) is Source else None


class _Unpickler(pickle.Unpickler):
    def __init__(self, data: bytes, sources: list[Source]) -> None:
        super().__init__(BytesIO(data))
        self.sources = sources

    def persistent_load(self, pid: Any) -> Source:
        return self.sources[int(pid)]

    def find_class(self, module: str, name: str) -> Any:
        if name not in _ALLOWED.get(module, ()):
            raise pickle.UnpicklingError(f"{module}.{name} is not read from a part")
        return getattr(import_module(module), name)


def packed(value: object) -> bytes:
    """A value of the listed classes as bytes."""
    out = BytesIO()
    pickler = _Pickler(out)
    pickler.dump(value)
    texts = [(source.path, source.text) for source in pickler.sources]
    return pickle.dumps((texts, out.getvalue()), protocol=5)


def unpacked(data: bytes) -> Any:
    """The value again; some Exception where the bytes are not what `packed` gave."""
    texts, inside = _Unpickler(data, []).load()
    return _Unpickler(inside, [Source(path, text) for path, text in texts]).load()
