"""A part on the disk: a folder with what was found, and with the pages where it was built.

`guidebuild-part.json` says what it is a part of and names every other file with its SHA-256; what was found
lies beside it in `guidebuild-part.bin`, the pages below `site/`.
"""

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from hashlib import sha256
from pathlib import Path
from typing import Any

from guidebuild.build.batch import Batch
from guidebuild.build.outputs import safe
from guidebuild.build.parts.packing import packed, unpacked
from guidebuild.build.parts.share import Share, share
from guidebuild.build.trouble import Trouble
from guidebuild.outputs.made import Listed

HEAD, FOUND, SITE = "guidebuild-part.json", "guidebuild-part.bin", "site"


@dataclass(frozen=True, slots=True)
class Origin:
    """What all parts of one whole have in common. `prefix`: the way to the content from where they were made."""

    of: int
    version: str
    content: str
    languages: tuple[str, ...]
    prefix: str = field(compare=False)


@dataclass(frozen=True, slots=True)
class Part:
    """`pages`: site path -> SHA-256, None where only a check was made; `listed`: by output."""

    folder: Path
    number: int
    origin: Origin
    pages: Mapping[str, str] | None
    batch: Batch
    listed: Mapping[str, Listed]

    def page(self, path: str) -> bytes:
        """A file of the site; Trouble where it is not as it was written."""
        assert self.pages is not None
        return _sound(self.folder / SITE / path, self.pages[path])


def files_of(
    mine: Share,
    origin: Origin,
    batch: Batch,
    files: Mapping[str, bytes] | None,
    listed: Mapping[str, Listed],
) -> dict[str, bytes]:
    """The part as files; `files` of the site are None where only a check was made."""
    found = packed(
        (batch.settings, batch.outcomes, batch.other, batch.gathered, batch.faults, dict(listed))
    )
    sums = {path: sha256(data).hexdigest() for path, data in sorted((files or {}).items())}
    head = {
        "part": f"{mine.number}/{mine.of}",
        "guidebuild": origin.version,
        "content": origin.content,
        "languages": origin.languages,
        "prefix": origin.prefix,
        "found": sha256(found).hexdigest(),
        "pages": sums if files is not None else None,
    }
    written = {HEAD: json.dumps(head, indent=1).encode() + b"\n", FOUND: found}
    return written | {f"{SITE}/{path}": data for path, data in (files or {}).items()}


def read_part(folder: Path) -> Part:
    """The part that a folder holds; Trouble where it is none, or not as it was written."""
    try:
        head = json.loads((folder / HEAD).read_bytes())
    except FileNotFoundError:
        raise Trouble(
            f"{folder} is no part: it has no {HEAD}. `build --part K/N` makes one."
        ) from None
    except (OSError, ValueError, RecursionError) as error:
        raise Trouble(f"{folder / HEAD} can't be read. Make this part again.") from error
    try:
        return _part(folder, head)
    except Trouble:
        raise
    except Exception as error:  # whatever is wrong with it: the bytes come from another machine
        raise Trouble(f"{folder} is damaged, or no part. Make it again.") from error


def _part(folder: Path, head: dict[str, Any]) -> Part:
    mine = share(head["part"])
    pages = head["pages"]
    if pages is not None:
        pages = dict(_pages(folder, pages))
    origin = Origin(
        mine.of,
        str(head["guidebuild"]),
        str(head["content"]),
        tuple(map(str, head["languages"])),
        str(head["prefix"]),
    )
    found = unpacked(_sound(folder / FOUND, head["found"]))
    settings, outcomes, other, gathered, faults, listed = found
    batch = Batch(settings, outcomes, other, gathered, faults)
    return Part(folder, mine.number, origin, pages, batch, listed)


def _pages(folder: Path, told: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    for path, sum_ in told.items():
        if not safe(path):
            raise Trouble(f"{folder} names a page outside of the site: {path!r}. Make it again.")
        yield path, str(sum_)


def _sound(file: Path, sum_: str) -> bytes:
    """The bytes of a file that has this SHA-256."""
    try:
        data = file.read_bytes()
    except OSError as error:
        raise Trouble(f"{file} can't be read: {error.strerror}. Make this part again.") from error
    if sha256(data).hexdigest() != sum_:
        raise Trouble(f"{file} is not as it was written. Make this part again.")
    return data
