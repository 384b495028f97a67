"""Two records or two guides of a content folder, or one of them at two commits."""

from collections.abc import Sequence
from contextlib import ExitStack
from dataclasses import dataclass
from pathlib import Path

from guidebuild.build.at_commit import at_commit
from guidebuild.build.drafting import device_of, guides_of
from guidebuild.build.trouble import Trouble
from guidebuild.device.record import Device
from guidebuild.guide.content import Content
from guidebuild.guide.guide import Guide
from guidebuild.plan.compare.change import Difference
from guidebuild.plan.compare.guides import guide_differences
from guidebuild.plan.compare.records import record_changes
from guidebuild.plan.compare.touched import differences
from guidebuild.read.content import read_content


@dataclass(frozen=True, slots=True)
class Compared:
    """What the two are called, and how they differ."""

    one: str
    other: str
    found: tuple[Difference, ...]


def compare(root: Path, names: Sequence[str], since: str = "", until: str = "") -> Compared:
    """`names`: one or two ids of devices, or guides as content paths. `since`, `until`: commits; empty is now."""
    with ExitStack() as stack:
        before = stack.enter_context(at_commit(root, since)) if since else root
        after = stack.enter_context(at_commit(root, until)) if until else root
        old, _ = read_content(before)
        new, _ = (old, None) if before == after else read_content(after)
        first, second = names[0], names[-1]
        now = f"{second} as it is now" if since else second
        words = (
            (f"{first} at {since}" if since else first),
            (f"{second} at {until}" if until else now),
        )
        if first.endswith(".md") != second.endswith(".md"):
            raise Trouble("Compare two records, or two guides; these are one of each.")
        if first.endswith(".md"):
            found = guide_differences(_guide(old, first), _guide(new, second))
        else:
            found = _records(old, new, device_of(old, first), device_of(new, second))
        return Compared(*words, tuple(found))


def _records(old: Content, new: Content, one: Device, other: Device) -> list[Difference]:
    guides = {guide.path: guide for guide in guides_of(old, one.id)}
    guides |= {guide.path: guide for guide in guides_of(new, other.id)}
    several = [each.guide for each in new.guides if len(each.guide.devices) > 1]
    guides |= {
        guide.path: guide
        for guide in several
        if {one.id, other.id} & {said.text for said in guide.devices}
    }
    return differences(record_changes(one, other), list(guides.values()), [one, other])


def _guide(content: Content, path: str) -> Guide:
    for each in content.guides:
        if path in (each.guide.path, each.guide.path.removeprefix("guides/")):
            return each.guide
    known = ", ".join(each.guide.path for each in content.guides)
    raise Trouble(f"There is no guide {path} here. There are: {known}.")
