"""All parts of a whole put together: one report, one site, the same as from a single run."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from guidebuild.build import outputs
from guidebuild.build.batch import Batch
from guidebuild.build.check import result_of
from guidebuild.build.parts.part import Part, read_part
from guidebuild.build.result import CheckResult
from guidebuild.build.rules_site import rules_page
from guidebuild.build.site_files import languages_of
from guidebuild.build.swap import put
from guidebuild.build.trouble import Trouble
from guidebuild.outputs.made import Listed


@dataclass(frozen=True, slots=True)
class Joined:
    """`written`: how many files stand in the site by us. `prefix`: the way to the content, as the parts saw it."""

    result: CheckResult
    prefix: str
    written: int = 0


def join(folders: Sequence[Path], out: Path | None) -> Joined:
    """Put the parts together; the site goes to `out` where one is named.

    Trouble where they are not the parts of one whole, or where `out` can't be written. As in a single run, a fault of
    ours leaves the old site as it is.
    """
    parts = _in_order([read_part(folder) for folder in folders])
    whole = Batch()
    for part in parts:
        whole.add(part.batch)
    found = Joined(result_of(whole, whole=True), parts[0].origin.prefix)
    if out is None:
        return found
    for part in parts:
        if part.pages is None:
            told = f"{part.number}/{part.origin.of}"
            raise Trouble(
                f"{part.folder} holds no pages, only a check. Make it with `guidebuild build --part {told}`."
            )
    if found.result.faults:
        return found
    files = _Files(parts, _lists(parts, whole))
    put(files, out)
    return Joined(found.result, found.prefix, len(files))


def _in_order(parts: Sequence[Part]) -> list[Part]:
    """The first part first; Trouble where one is missing or does not belong to the others."""
    first, *more = parts
    for part in more:
        if part.origin.of != first.origin.of:
            raise Trouble(
                f"{first.folder} is one of {first.origin.of} parts, {part.folder} one of {part.origin.of}. "
                "Make all of them with the same --part K/N."
            )
        if part.origin != first.origin:
            raise Trouble(
                f"{part.folder} and {first.folder} were not made of the same content by the same command. "
                "Make all parts again."
            )
    known: dict[int, Part] = {}
    for part in parts:
        if known.setdefault(part.number, part) is not part:
            raise Trouble(f"{known[part.number].folder} and {part.folder} are the same part.")
    for number in range(1, first.origin.of + 1):
        if number not in known:
            raise Trouble(f"Part {number} of {first.origin.of} is missing. Name all parts.")
    return [known[number] for number in sorted(known)]


def _lists(parts: Sequence[Part], whole: Batch) -> dict[str, bytes]:
    """What every output says of all guides together."""
    order = languages_of(whole.settings, parts[0].origin.languages)
    found = dict(rules_page(whole.settings.theme, order[0]))
    for name, module in outputs.modules():
        if hasattr(module, "make_lists"):
            listed = _together([part.listed.get(name, {}) for part in parts], order)
            found |= module.make_lists(whole.settings, listed)
    return found


def _together(some: Sequence[Listed], order: Sequence[str]) -> Listed:
    """The parts' lists one behind the other; a language of which no part has a guide is left out."""
    found: dict[str, list[Any]] = {}
    for language in order:
        for listed in some:
            if language in listed:
                found.setdefault(language, []).extend(listed[language])
    return found


class _Files(Mapping[str, bytes]):
    """The site's files, each read from its part when it is asked for: a site need not fit into memory."""

    def __init__(self, parts: Sequence[Part], lists: Mapping[str, bytes]) -> None:
        self._parts = {path: part for part in parts for path in part.pages or ()}
        self._lists = lists

    def __getitem__(self, path: str) -> bytes:
        return self._lists[path] if path in self._lists else self._parts[path].page(path)

    def __iter__(self) -> Iterator[str]:
        return iter({**self._parts, **self._lists})

    def __len__(self) -> int:
        return len({**self._parts, **self._lists})
