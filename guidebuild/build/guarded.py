"""Pickles read with a list of what may be made from them: nothing else of Python is reachable from one."""

import pickle
from collections.abc import Collection, Mapping
from importlib import import_module
from io import BytesIO
from typing import Any, ClassVar


class Guarded(pickle.Unpickler):
    """`may_be_made`: the names by their module; `origin`: where the bytes come from, for the message."""

    may_be_made: ClassVar[Mapping[str, Collection[str]]] = {}
    origin: ClassVar[str] = "a cache"

    def __init__(self, data: bytes) -> None:
        super().__init__(BytesIO(data))

    def find_class(self, module: str, name: str) -> Any:
        if name not in self.may_be_made.get(module, ()):
            raise pickle.UnpicklingError(f"{module}.{name} is not read from {self.origin}")
        return getattr(import_module(module), name)
