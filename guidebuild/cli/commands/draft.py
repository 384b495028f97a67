"""Write a guide from the record of a device: take the part out, change it, put all back, try it.

DEVICE and each PART are ids of the content folder. The guide is written where it belongs (guides/DEVICE/), never over
a file that is there, and checked at once.
"""

import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path

from guidebuild.cli import asking, codes, putting, reporting
from guidebuild.cli.goals import GOALS


def arguments(parser: ArgumentParser) -> None:
    """What `draft` takes."""
    parser.add_argument("device", metavar="DEVICE", nargs="?", help="id of the device")
    parser.add_argument("part", metavar="PART", nargs="*", help="ids of the parts that it is about")
    parser.add_argument(
        "--goal", choices=GOALS, default="replace", help="what to do (usual: replace)"
    )
    parser.add_argument(
        "--kit", metavar="KIT", help="kit to use, or `none` (usual: the one that brings PART)"
    )
    parser.add_argument(
        "--form", metavar="FORM", default="", help="write it for one form of the kit only"
    )
    parser.add_argument(
        "--putback", metavar="GUIDE", help="write the way back for a guide that only takes apart"
    )
    parser.add_argument("--content", metavar="PATH", help="content folder (usual: content)")
    parser.add_argument("--out", metavar="FILE", help="another file to write; - prints it")
    parser.add_argument("--force", action="store_true", help="write over a file that is there")


def run(args: Namespace) -> int:
    """Draft, write, check, and say what came of it."""
    from guidebuild.build.trouble import Trouble

    if args.putback is None and not (args.device and args.part):
        raise Trouble("Name a DEVICE and a PART or several, or a guide with --putback.")
    return _put_back(args) if args.putback else _whole(args)


def _whole(args: Namespace) -> int:
    from guidebuild.build.drafting import Asked, drafted

    root = asking.whole(args.content).root
    kits = None if args.kit is None else () if args.kit == "none" else (args.kit,)
    first, *more = args.part
    asked = Asked(args.device, first, args.goal, kits, args.form, tuple(more))
    path, text, found = drafted(root, asked)
    exact = (
        "no order costs less"
        if found.cost == found.bound
        else f"none costs less than {found.bound}"
    )
    print(
        f"Taking apart costs {found.cost} (parts that come off, and changes of tool); {exact}.",
        file=sys.stderr,
    )
    if found.along:
        print(f"Comes along, as it sits there: {', '.join(found.along)}.", file=sys.stderr)
    return _written(args, root, path, text)


def _put_back(args: Namespace) -> int:
    from guidebuild.build.putting_back import put_back

    content = asking.asked(args.putback)
    return _written(args, content.root, content.within, put_back(content))


def _written(args: Namespace, root: Path, path: str, text: str) -> int:
    if args.out == reporting.STDOUT:
        reporting.print_out(text)
        return codes.CLEAN
    return putting.put(
        root, Path(args.out) if args.out else root / path, text, args.force, args.trace
    )
