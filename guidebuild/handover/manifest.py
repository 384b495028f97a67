"""SHA256SUMS: every file with its checksum, in the form that any checksum program reads.

Source: the text format of GNU coreutils' sha256sum: 64 hexadecimal figures, two spaces, the path; sorted by
bytes, so that one tree has one manifest.
"""

import hashlib
import re
from collections.abc import Mapping
from pathlib import Path

NAME = "SHA256SUMS"
COMING = "SHA256SUMS.new"  # there while a stick is being written
_LINE = re.compile(r"([0-9a-fA-F]{64}) [ *](.+)")
LARGEST = 64 * 2**20  # bytes: some hundred thousand files; more is no list of ours


def checksum(path: Path) -> str:
    """SHA-256 of a file's bytes, in small hexadecimal figures."""
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def write_manifest(sums: Mapping[str, str]) -> bytes:
    """The file's bytes for path -> checksum."""
    order = sorted(sums, key=lambda path: path.encode())
    return "".join(f"{sums[path]}  {path}\n" for path in order).encode()


def read_manifest(data: bytes) -> tuple[dict[str, str], list[int]]:
    """Path -> checksum, and the numbers of the lines that can't be read or name a place outside the tree."""
    sums: dict[str, str] = {}
    bad: list[int] = []
    for number, line in enumerate(data.decode("utf-8", "replace").splitlines(), 1):
        found = _LINE.fullmatch(line.rstrip("\r"))
        if found is None or _leads_out(found[2]) or found[2] in sums:
            bad.append(number)
        else:
            sums[found[2]] = found[1].lower()
    return sums, bad


def sums_in(path: Path) -> tuple[dict[str, str], list[int]]:
    """What a manifest's file says; one that is far too large is not read, and told as its first line."""
    if path.stat().st_size > LARGEST:
        return {}, [1]
    return read_manifest(path.read_bytes())


def _leads_out(path: str) -> bool:
    parts = path.replace("\\", "/").split("/")
    return path.startswith("/") or "\ufffd" in path or ".." in parts or "" in parts or ":" in path
