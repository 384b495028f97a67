"""What the last build of a content folder put into a site, and what of it still holds.

A guide's pages are kept where nothing that they depend on has changed and where they still stand as they were
written. Everything is told by content, but for the written pages: those by size and time.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cache
from hashlib import blake2b
from pathlib import Path
from typing import Any

from guidebuild.build.cache import store
from guidebuild.build.cache.digests import Digests, digest, stamps
from guidebuild.build.listing import ours
from guidebuild.shipped import shipped

Stamp = tuple[int, int]  # size and time


@dataclass(frozen=True, slots=True)
class Now:
    """A site just built: of each guide that was made the content that it was made of, and its site files."""

    guides: Mapping[str, tuple[Iterable[str], Iterable[str]]]
    shared: Iterable[str]
    lists: Iterable[str]
    listed: bytes
    languages: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Kept:
    """Of one guide: the content that it was made of, the digest of that, and its site files."""

    files: tuple[str, ...]
    told: bytes
    pages: Mapping[str, Stamp]


@dataclass(slots=True)
class LastSite:
    """`guides`: those that have a page. `shared`: files of no guide alone; `lists` are such, of all guides.

    `listed`: what the lists say of each guide, as bytes; see `renew`.
    """

    file: Path
    out: Path
    digests: Digests
    guides: dict[str, Kept] = field(default_factory=dict)
    shared: dict[str, Stamp] = field(default_factory=dict)
    lists: dict[str, Stamp] = field(default_factory=dict)
    listed: bytes = b""
    languages: tuple[str, ...] = ()

    @property
    def pages(self) -> set[str]:
        """All files of the site."""
        own = {page for one in self.guides.values() for page in one.pages}
        return own | set(self.shared) | set(self.lists)

    def fresh(self, every: Iterable[str]) -> frozenset[str]:
        """The guides whose pages are still right; none where the site as a whole is not as it was written."""
        if not self.shared or not self._stand({**self.shared, **self.lists}):
            return frozenset()
        return frozenset(path for path in every if self._is_fresh(path))

    def _is_fresh(self, path: str) -> bool:
        kept = self.guides.get(path)
        if kept is None or self._told(path, kept.files) != kept.told:
            return False
        return self._stand(kept.pages)

    def _told(self, path: str, files: Iterable[str]) -> bytes:
        return digest(_theme(), self.digests.guide(path, files))

    def _stand(self, pages: Mapping[str, Stamp]) -> bool:
        return all(_stamp(self.out / page) == stamp for page, stamp in pages.items())

    def keep(self, now: Now, still: Iterable[str] = ()) -> None:
        """Write down the site as it stands in its place; `still`: guides of which nothing changed."""
        guides = {path: self.guides[path] for path in still}
        for path, (files, pages) in now.guides.items():
            guides[path] = Kept(tuple(files), self._told(path, files), self._stamped(pages))
        held = {
            "guides": {path: (one.files, one.told, one.pages) for path, one in guides.items()},
            "shared": self._stamped(now.shared),
            "lists": self._stamped(now.lists),
            "listed": now.listed,
            "languages": now.languages,
        }
        store.save(self.file, held)

    def _stamped(self, pages: Iterable[str]) -> dict[str, Stamp]:
        found = ((page, _stamp(self.out / page)) for page in pages)
        return {page: stamp for page, stamp in found if stamp is not None}


def last_site(root: Path, out: Path, languages: tuple[str, ...], files: frozenset[str]) -> LastSite:
    """What is known of the site in `out`, made of this content in these languages (none named: all)."""
    out = out.resolve()
    name = blake2b(repr((str(root.resolve()), str(out), languages)).encode(), digest_size=16)
    file = store.folder() / f"{name.hexdigest()}.site.cache"
    last = LastSite(file, out, Digests(root, files))
    try:
        _read(store.load(file), last)
    except (KeyError, TypeError, ValueError):  # of another kind: as good as none
        return LastSite(file, out, last.digests)
    return last


def _read(held: Mapping[str, Any], last: LastSite) -> None:
    """Nothing is taken up where somebody else wrote into the site since."""
    last.guides = {path: Kept(*one) for path, one in held["guides"].items()}
    last.shared, last.lists = dict(held["shared"]), dict(held["lists"])
    last.listed, last.languages = held["listed"], tuple(held["languages"])
    if not last.pages <= ours(last.out):
        last.guides, last.shared = {}, {}


@cache
def _theme() -> bytes:
    return digest(*stamps(shipped("themes")))


def _stamp(file: Path) -> Stamp | None:
    try:
        stat = file.stat()
    except OSError:
        return None
    return stat.st_size, stat.st_mtime_ns
