"""Outcomes as bytes: every value but the authors' texts, which are on the disk anyway."""

import pickle
from collections.abc import Callable
from io import BytesIO
from typing import Any

from guidebuild.build.guarded import Guarded
from guidebuild.source.text import Source

Texts = Callable[[str], str | None]  # the text of a content path, None where there is none

# All that may be made from a cache: nothing else of Python is reachable from one.
MAY_BE_MADE = {
    "guidebuild.build.outcome": {"Outcome"},
    "guidebuild.build.result": {"CheckResult"},
    "guidebuild.guide.guide": {"Allow"},
    "guidebuild.guide.settings": {"Settings"},
    "guidebuild.reports.parts.slip": {"Slip"},
    "guidebuild.source.edit": {"Edit"},
    "guidebuild.source.finding": {"Category", "Finding", "Loudness", "Related", "Told"},
    "guidebuild.source.said": {"Said"},
    "guidebuild.source.span": {"Span"},
}


class NotKept(Exception):
    """Something in a value can't be found again on the disk."""


class _Pickler(pickle.Pickler):
    """A source is written as its path; its text must be what the disk has."""

    def __init__(self, out: BytesIO, texts: Texts) -> None:
        super().__init__(out, protocol=5)
        self.texts = texts

    def persistent_id(self, obj: Any) -> str | None:
        if type(obj) is not Source:
            return None
        if self.texts(obj.path) != obj.text:
            raise NotKept(obj.path)
        return obj.path


class _Unpickler(Guarded):
    """The same source for the same path, however often it is named."""

    may_be_made = MAY_BE_MADE

    def __init__(self, data: bytes, texts: Texts) -> None:
        super().__init__(data)
        self.texts = texts
        self.sources: dict[str, Source] = {}

    def persistent_load(self, pid: Any) -> Source:
        if pid not in self.sources:
            text = self.texts(pid)
            if text is None:
                raise NotKept(pid)
            self.sources[pid] = Source(pid, text)
        return self.sources[pid]


def to_bytes(value: object, texts: Texts) -> bytes | None:
    """The value as bytes; None where it can't be kept."""
    out = BytesIO()
    try:
        _Pickler(out, texts).dump(value)
    except NotKept:
        return None
    return out.getvalue()


def from_bytes(data: bytes, texts: Texts) -> Any:
    """The value again; NotKept or UnpicklingError where it is not to be had."""
    return _Unpickler(data, texts).load()
