"""Hand guides over: onto a stick or into a folder, as a zip, or as a bag for an archive.

The names are checked before anything is written; only what changed is copied; every file is read back and compared.
Pulled out at any moment, a stick holds the old guides or the new ones, and a second run mends it.
"""

import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path

from guidebuild.cli import asking, codes, reporting


def arguments(parser: ArgumentParser) -> None:
    """What `pack` takes."""
    asking.arguments(parser)
    parser.add_argument(
        "--to", required=True, metavar="PLACE", help="the stick's folder, or NAME.zip"
    )
    parser.add_argument(
        "--guides", metavar="NAMES", default="", help="only these, by number or file name"
    )
    parser.add_argument("--languages", metavar="TAGS", default="", help="only these, as in de,ar")
    parser.add_argument("--number", metavar="NAME", default="", help="what the stick is called")
    parser.add_argument(
        "--holder",
        metavar="NAME",
        default="",
        help="who gets it: noted in the content's sticks.csv",
    )
    parser.add_argument("--bag", action="store_true", help="as a bag (RFC 8493)")
    parser.add_argument(
        "--no-single", action="store_true", help="without the one-file guides for phones"
    )
    parser.add_argument(
        "--dry-run", action="store_true", help="say what would be written, and how much"
    )


def run(args: Namespace) -> int:
    """Pack, and say in a line what was done."""
    root = asking.whole(args.path).root
    from guidebuild.build.pack import Packed, Wish, pack
    from guidebuild.build.site_files import Chosen
    from guidebuild.cli.progress import Bar

    chosen = Chosen(*(tuple(filter(None, one.split(","))) for one in (args.guides, args.languages)))
    form = "bag" if args.bag else "zip" if args.to.endswith(".zip") else "folder"
    wish = Wish(
        Path(args.to), form, chosen, args.number, args.holder, not args.no_single, args.dry_run
    )
    bar = Bar("Packing")
    try:
        packed: Packed = pack(root, wish, bar)
    finally:
        bar.close()
    report = packed.site.report(asking.prefix(root))
    reporting.write(reporting.wanted([]), report)
    for bad in packed.bad:
        print(f"{bad.path}: {bad.why}. Rename it.", file=sys.stderr)
    if packed.bad:
        print("Nothing was written.", file=sys.stderr)
        return codes.FINDINGS
    if packed.files:
        size = sum(packed.files.values())
        what = "would hold" if args.dry_run else f"holds, {packed.written} bytes newly written,"
        print(f"{args.to} {what} {len(packed.files)} files, {size} bytes.", file=sys.stderr)
    return codes.of(report, args.trace)
