"""List the sticks that hold an old form of a guide, and what changed since.

`pack --holder` writes the stick list, content/sticks.csv. A changed caution comes first.
"""

from argparse import ArgumentParser, Namespace
from typing import TYPE_CHECKING

from guidebuild.cli import asking, codes

if TYPE_CHECKING:
    from guidebuild.guide.content import Content
    from guidebuild.handover.recall import Old


def arguments(parser: ArgumentParser) -> None:
    """What `recall` takes."""
    asking.arguments(parser)


def run(args: Namespace) -> int:
    """Compare every stick of the list with the guides as they are now."""
    from guidebuild.build.sticks import listed, outdated
    from guidebuild.read.content import read_content

    root = asking.whole(args.path).root
    content, _ = read_content(root)
    old = outdated(root, content)
    for one in old:
        print("\n".join(_lines(one, content)) + "\n")
    sticks = {one.stick for one in listed(root)}
    behind = {one.held.stick for one in old}
    print(f"{len(behind)} of {len(sticks)} sticks are out of date.")
    return codes.FINDINGS if old else codes.CLEAN


def _lines(old: "Old", content: "Content") -> list[str]:
    from guidebuild.build.sticks import titles

    held = old.held
    who = f", with {held.holder}" if held.holder else ""
    lines = [f"Stick {held.stick}{who}, of {held.date}: {held.guide}, issue {held.issue}"]
    if old.gone:
        return [*lines, "  The guide is no longer there: call the stick back."]
    for what, steps in (
        ("Cautions changed", old.cautions),
        ("Steps changed", old.changed),
        ("Steps added", old.added),
        ("Steps taken out", old.removed),
    ):
        if steps:
            lines.append(f"  {what}: {'; '.join(titles(content, held.guide, steps))}")
    return lines
