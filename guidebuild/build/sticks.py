"""The stick list of a content folder: what pack writes into it, and what recall reads out of it."""

from collections.abc import Sequence
from pathlib import Path

from guidebuild.build.site_files import SiteFiles
from guidebuild.build.trouble import Trouble
from guidebuild.build.whole_file import put_whole
from guidebuild.guide.content import Content
from guidebuild.handover.marks import Mark, marks
from guidebuild.handover.recall import Old, recalled
from guidebuild.handover.stick_list import NAME, Held, read_list, write_list

LARGEST = 64 * 2**20  # bytes: a line for each guide on each stick, with a mark for each step


def listed(root: Path) -> list[Held]:
    """The stick list; Trouble where it can't be read, since a line that is lost is a stick that is lost."""
    path = root / NAME
    if not path.is_file():
        return []
    if path.stat().st_size > LARGEST:
        raise Trouble(f"{path} is larger than {LARGEST // 2**20} MB: it is no stick list.")
    held, bad = read_list(path.read_text(encoding="utf-8", errors="replace"))
    if bad:
        raise Trouble(
            f"{path}, line {bad[0]}, can't be read: columns stick, guide and steps are wanted."
        )
    return held


def note(root: Path, site: SiteFiles, number: str, holder: str, day: str) -> None:
    """Write into the list what a stick holds from now on, and who has it."""
    content = site.result.content
    assert content is not None
    new = [
        Held(
            number,
            day,
            holder,
            one.guide.path,
            one.guide.issue.text if one.guide.issue else "",
            " ".join(site.languages),
            marks(one.guide, one.device),
        )
        for one in content.guides
        if one.guide.path in site.paths
    ]
    kept = [one for one in listed(root) if one.stick != number]
    put_whole(root / NAME, write_list([*kept, *new]).encode())


def outdated(root: Path, content: Content) -> list[Old]:
    """The sticks that hold an old form of something, the grave ones first."""
    now: dict[str, tuple[Mark, ...]] = {
        one.guide.path: marks(one.guide, one.device) for one in content.guides
    }
    return sorted(recalled(listed(root), now), key=lambda old: (not old.grave, old.held.stick))


def titles(content: Content, path: str, steps: Sequence[str]) -> list[str]:
    """Steps by their titles, as far as the guide still has them."""
    known = {
        step.id: step.title.text
        for one in content.guides
        if one.guide.path == path
        for step in one.guide.steps
    }
    return [known.get(step, step) for step in steps]
