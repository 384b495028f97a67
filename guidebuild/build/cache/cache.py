"""What an earlier check of the same content found, and what of it still holds."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from guidebuild.build.cache import kept, store
from guidebuild.build.cache.digests import Digests, digest
from guidebuild.build.outcome import Outcome
from guidebuild.build.result import CheckResult


@dataclass(slots=True)
class Cache:
    """`guides`: path -> (files, digest, outcome as bytes). `rest`: (digest, what was found there, as bytes).
    `result`: the same of a whole check, which needs nothing else where nothing changed.

    Everything is told by content: a file's name and date say nothing, and what does not fit is worked out anew.
    """

    file: Path
    digests: Digests
    guides: dict[str, tuple[tuple[str, ...], bytes, bytes]] = field(default_factory=dict)
    rest: tuple[bytes, bytes] | None = None
    result: tuple[bytes, bytes] | None = None
    changed: bool = False

    def outcomes(self, paths: Iterable[str]) -> dict[str, Outcome]:
        """What is known of these guides."""
        found = {}
        for path in paths:
            outcome = self._outcome(path)
            if outcome is not None:
                found[path] = outcome
        return found

    def _outcome(self, path: str) -> Outcome | None:
        files, told, data = self.guides.get(path, ((), b"", b""))
        if not data or self.digests.guide(path, files) != told:
            return None
        outcome = self._read(data)
        return outcome if isinstance(outcome, Outcome) else None

    def beside(self) -> tuple[Any, ...] | None:
        """What is known of all that is no guide: settings, findings, and what it says to rules."""
        if self.rest is None or self.rest[0] != self.digests.rest():
            return None
        known = self._read(self.rest[1])
        return known if isinstance(known, tuple) and len(known) == 3 else None

    def whole(self, every: Sequence[str]) -> CheckResult | None:
        """The result of a check of all guides, where nothing at all has changed."""
        if self.result is None or self.result[0] != self._whole(every):
            return None
        result = self._read(self.result[1])
        return result if isinstance(result, CheckResult) else None

    def _whole(self, every: Sequence[str]) -> bytes:
        guides = (self.digests.guide(path, self.guides.get(path, ((),))[0]) for path in every)
        return digest(self.digests.rest(), *every, "", *guides)

    def keep_whole(self, every: Sequence[str], result: CheckResult) -> None:
        """Add the result of a check of all guides."""
        known = all(path in self.guides for path in every)
        data = kept.to_bytes(result, self._text) if known and not result.faults else None
        if data is not None:
            self.result = self._whole(every), data
            self.changed = True

    def _read(self, data: bytes) -> object:
        try:
            return kept.from_bytes(data, self._text)
        except Exception:  # a cache that can't be read is none
            return None

    def keep(self, outcomes: Sequence[Outcome], rest: tuple[Any, ...] | None) -> None:
        """Add what was worked out; what fell over, or could not be read, is tried again the next time."""
        for outcome in outcomes:
            sound = outcome.read and not outcome.faults
            data = kept.to_bytes(outcome, self._text) if sound else None
            if data is not None:
                told = self.digests.guide(outcome.path, outcome.files)
                self.guides[outcome.path] = outcome.files, told, data
                self.changed = True
        data = kept.to_bytes(rest, self._text) if rest is not None else None
        if data is not None:
            self.rest = self.digests.rest(), data
            self.changed = True

    def save(self, every: Iterable[str]) -> None:
        """Write it, without guides that are gone."""
        if self.changed:
            still = {path: self.guides[path] for path in every if path in self.guides}
            store.save(self.file, {"guides": still, "rest": self.rest, "result": self.result})

    def _text(self, path: str) -> str | None:
        try:
            return (self.digests.root / path).read_bytes().decode("utf-8-sig")
        except (OSError, UnicodeDecodeError):
            return None


def opened(root: Path, files: frozenset[str]) -> Cache:
    """The cache of a content folder, with whatever of it is sound."""
    file = store.file_of(root)
    held = store.load(file)
    guides = dict(_sound(held.get("guides")))
    return Cache(file, Digests(root, files), guides, _pair(held, "rest"), _pair(held, "result"))


def _pair(held: dict[str, Any], key: str) -> tuple[bytes, bytes] | None:
    """A digest and what goes with it."""
    match held.get(key):
        case (bytes() as told, bytes() as data):
            return told, data
        case _:
            return None


def _sound(held: object) -> Iterator[tuple[str, tuple[tuple[str, ...], bytes, bytes]]]:
    for path, entry in held.items() if isinstance(held, dict) else ():
        if isinstance(entry, tuple) and list(map(type, entry)) == [tuple, bytes, bytes]:
            yield path, entry
