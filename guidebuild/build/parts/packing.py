"""What came of a part as bytes, with the texts that its findings stand in: it is joined where no content lies."""

import pickle
from io import BytesIO
from pickletools import genops
from typing import Any

from guidebuild.build.cache.kept import MAY_BE_MADE
from guidebuild.build.guarded import Guarded
from guidebuild.source.text import Source

# All that may be made from a part: it comes from another machine, and nothing in it can run.
_ALLOWED = {
    **MAY_BE_MADE,
    "guidebuild.outputs.html.page.index": {"Found"},
    "guidebuild.outputs.html.page.start": {"GuideEntry"},
    "guidebuild.reports.parts.report": {"Fault"},
    "guidebuild.translate.messages.text": {"Age", "Mark", "Piece"},
}


# All that a pickle of ours is written with. Others make a few bytes take gigabytes (a memo's place by number).
_CODES = (
    "PROTO FRAME STOP MARK POP POP_MARK MEMOIZE BINGET LONG_BINGET NONE NEWTRUE NEWFALSE BININT BININT1 BININT2 LONG1 "
    "BINFLOAT SHORT_BINUNICODE BINUNICODE BINUNICODE8 SHORT_BINBYTES BINBYTES BINBYTES8 EMPTY_LIST APPEND APPENDS "
    "EMPTY_TUPLE TUPLE TUPLE1 TUPLE2 TUPLE3 EMPTY_DICT SETITEM SETITEMS EMPTY_SET ADDITEMS FROZENSET STACK_GLOBAL "
    "REDUCE NEWOBJ BUILD BINPERSID"
)
_WRITTEN_WITH = frozenset(_CODES.split())


class _Pickler(pickle.Pickler):
    """A source is written once, and named by its place among the sources."""

    def __init__(self, out: BytesIO) -> None:
        super().__init__(out, protocol=5)
        self.sources: dict[Source, int] = {}  # sources are told apart by identity

    def persistent_id(self, obj: Any) -> int | None:
        return self.sources.setdefault(obj, len(self.sources)) if type(obj) is Source else None


class _Unpickler(Guarded):
    may_be_made = _ALLOWED
    origin = "a part"

    def __init__(self, data: bytes, sources: list[Source]) -> None:
        super().__init__(data)
        self.sources = sources

    def persistent_load(self, pid: Any) -> Source:
        return self.sources[int(pid)]


def packed(value: object) -> bytes:
    """A value of the listed classes as bytes."""
    out = BytesIO()
    pickler = _Pickler(out)
    pickler.dump(value)
    texts = [(source.path, source.text) for source in pickler.sources]
    return pickle.dumps((texts, out.getvalue()), protocol=5)


def unpacked(data: bytes, *, ours: bool = False) -> Any:
    """The value again; some Exception where the bytes are not what `packed` gave.

    `ours`: a checksum of our own told that they are, so they are not looked through before.
    """
    if not ours:
        _looked_through(data)
    texts, inside = _Unpickler(data, []).load()
    if not ours:
        _looked_through(inside)
    return _Unpickler(inside, [Source(path, text) for path, text in texts]).load()


def _looked_through(data: bytes) -> None:
    """Raises where it is written with what ours are not, or tells a length that is not there."""
    for code, _, at in genops(data):
        if code.name not in _WRITTEN_WITH:
            raise pickle.UnpicklingError(f"{code.name} at {at} is not read from a part")
