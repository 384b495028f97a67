"""New records, kits and guides, put where they belong in a content folder."""

import re
from dataclasses import dataclass
from pathlib import Path

from guidebuild.build.depth import depth_of
from guidebuild.build.drafting import Asked, drafted
from guidebuild.build.trouble import Trouble
from guidebuild.plan.start.kit import kit
from guidebuild.plan.start.record import record
from guidebuild.plan.start.strip import Removal, read_strip
from guidebuild.read.content import read_content

ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")
MOST = 2_000_000  # bytes of a strip-down sheet


@dataclass(frozen=True, slots=True)
class New:
    """A file to write: where in the content folder, and what."""

    path: str
    text: str


def strip(path: Path) -> list[Removal]:
    """The removals of a strip-down sheet; Trouble tells all that is wrong in it."""
    try:
        data = path.read_bytes()
        text = data.decode("utf-8")
    except OSError as error:
        raise Trouble(f"Can't read {path}: {error.strerror}.") from error
    except UnicodeDecodeError as error:
        raise Trouble(f"{path} is not UTF-8 (byte {error.start}). Save it as CSV UTF-8.") from error
    if len(data) > MOST:
        raise Trouble(f"{path} has {len(data)} bytes; a strip-down sheet has {MOST} at most.")
    found, slips = read_strip(text)
    if slips:
        lines = [
            f"line {one.line}{f', {one.column}' if one.column else ''}: {one.words}"
            for one in slips
        ]
        raise Trouble(f"{path} can't be read as a strip-down sheet.\n  " + "\n  ".join(lines))
    if not found:
        raise Trouble(f"{path} has no line with a part.")
    return found


def device(id_: str, name: str, base: str, removals: list[Removal]) -> New:
    """A record."""
    named(id_, "device")
    return New(f"devices/{id_}/device.yaml", record(id_, name, base, removals))


def new_kit(root: Path, id_: str, name: str, brings: str, number: str) -> New:
    """A kit, with what the records say must be new when the part is changed."""
    named(id_, "kit")
    named(brings, "part")
    content, _ = read_content(root)
    devices = [one.id for one in content.devices.values() if brings in one.names]
    rows = [row.depth for one in devices for row in depth_of(root, one)[1]]
    used_up = dict.fromkeys(key for one in rows if one.part == brings for key in one.materials)
    return New(f"kits/{id_}.yaml", kit(id_, name, brings, number, tuple(used_up)))


def guide(root: Path, device_id: str, part: str, goal: str) -> New:
    """A guide drafted from the record, with comments in its front matter on what only an author can say."""
    path, text, _ = drafted(root, Asked(device_id, part, goal))
    head = "---\n" + "".join(f"# {line}\n" for line in _LATER)
    return New(path, text.replace("---\n", head, 1))


_LATER = (
    "Written from the record. What only you can say:",
    "number: LP2-01                       how the guide is called on paper",
    "issue: 1",
    "tried-on: [{serial: ..., date: 2026-01-31, by: ...}]   and then `status: released`",
    "In the steps: pictures (see the comments), `minutes:`, which way, where to hold, what one feels.",
)


def named(id_: str, what: str) -> None:
    """Trouble where an id is none."""
    if not ID.fullmatch(id_) or len(id_) > 60:
        raise Trouble(
            f"`{id_}` can't be the id of a {what}: write it in a-z, 0-9 and hyphens, as in larch-p2."
        )
