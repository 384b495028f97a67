"""What a content folder needs before a record: settings in an empty one, and tools that the record names."""

from pathlib import Path

from guidebuild.build.trouble import Trouble
from guidebuild.device.designation import parse_screw
from guidebuild.plan.start.folder import entries, settings, tools
from guidebuild.plan.start.ids import plain
from guidebuild.plan.start.strip import Removal
from guidebuild.read.content import read_content
from guidebuild.source.span import Span
from guidebuild.source.text import Source

TOOLS = "tools.yaml"


def first_files(root: Path, publisher: str, removals: list[Removal]) -> dict[str, str]:
    """By path. An empty or missing folder gets its first files; nothing where one is a content folder already."""
    if (root / "guidebuild.yaml").exists() or (root / "devices").is_dir():
        return {}
    if root.exists() and (not root.is_dir() or any(root.iterdir())):
        raise Trouble(
            f"{root} is no content folder and is not empty. Name a new folder with --content."
        )
    said = tools(entries(_drives(removals), _others(removals).items()))
    return {"guidebuild.yaml": settings(publisher), TOOLS: said}


def more_tools(root: Path, removals: list[Removal]) -> str:
    """Lines for tools.yaml of a content folder: tools of the sheet that nobody has written there. Empty: none."""
    known = read_content(root)[0].tools.values()
    fits = {said.text for tool in known for said in tool.fits}
    ids = {tool.id for tool in known}
    drives = [one for one in _drives(removals) if one not in fits]
    others = {id_: name for id_, name in _others(removals).items() if id_ not in ids}
    return "".join(f"{line}\n" for line in entries(drives, others.items()))


def _others(removals: list[Removal]) -> dict[str, str]:
    """Tools that no screw asks for, by id."""
    return {
        plain(hold.tool): hold.tool
        for one in removals
        for hold in one.holds
        if hold.tool and hold.kind not in ("fastener", "captive")
    }


def _drives(removals: list[Removal]) -> list[str]:
    screws = [hold.screw for one in removals for hold in one.holds if hold.screw]
    parsed = [parse_screw(text, Span(Source("strip", text), 0, len(text))) for text in screws]
    return list(dict.fromkeys(one.drive for one in parsed if one is not None and one.drive))
