"""Start a record, a kit or a guide with a file that passes the checks and says in comments what comes next.

`new device ID` asks for a name and parts, or takes a strip-down sheet with --from; --sheet FILE.html prints an empty
one for the bench, --sheet FILE.csv begins the file. `new kit ID --brings PART`. `new guide DEVICE --part PART`.
"""

import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path
from typing import TYPE_CHECKING

from guidebuild.cli import asking, codes, putting, reporting
from guidebuild.cli.goals import GOALS
from guidebuild.cli.questions import answer, several

if TYPE_CHECKING:
    from guidebuild.plan.start.strip import Removal


def arguments(parser: ArgumentParser) -> None:
    """What `new` takes."""
    parser.add_argument("what", choices=("device", "kit", "guide"), help="what to start")
    parser.add_argument("id", metavar="ID", help="its id; of a guide, the id of the device")
    parser.add_argument("--name", help="its name, as people say it")
    parser.add_argument("--base", help="device: the part that all is fitted to (usual: Frame)")
    parser.add_argument("--parts", help="device: its parts, with commas between")
    parser.add_argument(
        "--from", dest="strip", metavar="FILE.csv", help="device: a filled strip-down sheet"
    )
    parser.add_argument(
        "--sheet", metavar="FILE", help="device: an empty sheet, .html to print or .csv"
    )
    parser.add_argument("--brings", metavar="PART", help="kit: the part that it brings")
    parser.add_argument(
        "--part-number", metavar="NUMBER", help="kit: the number that it is ordered by"
    )
    parser.add_argument("--part", metavar="PART", help="guide: the part that it is about")
    parser.add_argument(
        "--goal", choices=GOALS, default="replace", help="guide: what is done to it"
    )
    parser.add_argument("--content", metavar="PATH", help="content folder (usual: content)")
    parser.add_argument("--force", action="store_true", help="write over a file that is there")


def run(args: Namespace) -> int:
    """Write the file, check it, and say what comes next."""
    if args.what == "device":
        return _sheet(args) if args.sheet else _device(args)
    root = asking.whole(args.content).root
    from guidebuild.build import starting
    from guidebuild.build.trouble import Trouble

    if args.what == "kit":
        brings = answer(args.brings, "Which part (id) does it bring?")
        if not brings:
            raise Trouble("Name the part that the kit brings with --brings.")
        name = answer(args.name, "What is it called?", args.id.replace("-", " ").capitalize())
        number = answer(args.part_number, "What number is it ordered by?", "NOT-KNOWN-YET")
        made = starting.new_kit(root, args.id, name, brings, number)
    else:
        part = answer(args.part, "Which part (id) is it about?")
        if not part:
            raise Trouble("Name the part that the guide is about with --part.")
        made = starting.guide(root, args.id, part, args.goal)
    return putting.put(root, root / made.path, made.text, args.force, args.trace)


def _sheet(args: Namespace) -> int:
    from guidebuild.build.drafting import put
    from guidebuild.plan.start.sheet import blank, sheet

    text = blank() if args.sheet.endswith(".csv") else sheet(args.name or args.id)
    if args.sheet == reporting.STDOUT:
        reporting.print_out(text)
        return codes.CLEAN
    put(Path(args.sheet), text, args.force)
    print(f"Written: {args.sheet}", file=sys.stderr)
    return codes.CLEAN


def _device(args: Namespace) -> int:
    from guidebuild.build import starting
    from guidebuild.build.drafting import put
    from guidebuild.build.first_files import first_files

    removals = _removals(args)
    root = Path(args.content or asking.USUAL)
    name = answer(args.name, "What is it called?", args.id.replace("-", " ").capitalize())
    base = answer(args.base, "What is everything fitted to?", "Frame")
    made = starting.device(args.id, name, base, removals)
    first = first_files(root, "Your company", removals)
    for path, text in first.items():
        put(root / path, text, False)
        print(f"Written: {root / path}", file=sys.stderr)
    found = putting.put(root, root / made.path, made.text, args.force, args.trace)
    if not first:
        _add_tools(root, removals)
    print(
        f"Next: `guidebuild new kit KIT --brings PART`, `guidebuild draft {args.id} PART`.",
        file=sys.stderr,
    )
    return found


def _add_tools(root: Path, removals: "list[Removal]") -> None:
    """Tools of the sheet that the folder does not know yet, at the end of its file."""
    from guidebuild.build.first_files import TOOLS, more_tools
    from guidebuild.build.whole_file import put_whole

    lines = more_tools(root, removals)
    if lines:
        path = root / TOOLS
        before = path.read_bytes() if path.exists() else b""
        gap = b"" if not before or before.endswith(b"\n") else b"\n"
        put_whole(path, before + gap + lines.encode())
        print(f"Added to {path}:\n{lines}", end="", file=sys.stderr)


def _removals(args: Namespace) -> "list[Removal]":
    from guidebuild.build.starting import strip
    from guidebuild.plan.start.strip import Removal

    if args.strip:
        return strip(Path(args.strip))
    names = several(args.parts, "Which part comes off first? (an empty line ends)")
    return [Removal(one, "", (), "") for one in dict.fromkeys(names or ["Cover"])]
