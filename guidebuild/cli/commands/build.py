"""Check, then write the whole as a site that opens from a folder or a stick, without a network.

PATH is a content folder; where none is given, the folder `content`, or else the one that you are in.
The site is written beside its place and swapped in when it is whole. Files in that place which guidebuild did not
write stay there. Findings do not stop a build, but the exit code tells of them, and the pages of a released guide
with errors say that it is not for work.
"""

import sys
from argparse import ArgumentParser, Namespace

from guidebuild.cli import asking, codes, parting, reporting


def arguments(parser: ArgumentParser) -> None:
    """What `build` takes."""
    asking.arguments(parser)
    parting.arguments(parser)
    parser.add_argument("--out", metavar="FOLDER", help="where to (usual: site)")
    parser.add_argument(
        "--languages",
        metavar="TAGS",
        default="",
        help="only these, as in de,ar (usual: all that are there)",
    )
    parser.add_argument(
        "--no-cache", action="store_true", help="make everything anew, and remember nothing"
    )
    reporting.arguments(parser)


def run(args: Namespace) -> int:
    """Build, write the reports, and say where to begin."""
    content = asking.whole(args.path)
    if args.part:
        return parting.run(args, content, pages=True)
    reports, out = reporting.wanted(args.report), args.out or "site"
    # Only now what is slow to load: wrong use is told at once.
    from pathlib import Path

    from guidebuild.build.languages.remarks import remarks
    from guidebuild.build.make import make
    from guidebuild.build.site_files import Chosen
    from guidebuild.cli.progress import Bar

    bar = Bar("Building")
    try:
        chosen = Chosen(languages=tuple(filter(None, args.languages.split(","))))
        made = make(content.root, Path(out), bar, chosen, cache=not args.no_cache)
    finally:
        bar.close()
    report = made.report(asking.prefix(content.root))
    reporting.write(reports, report)
    for remark in remarks(made.site.languages, chosen.languages) if made.written else ():
        print(remark, file=sys.stderr)
    for name in made.held_back if made.written else ():
        told = "has errors: its pages say that it is not for work"
        print(f"{name} is released and {told}.", file=sys.stderr)
    if made.written:
        print(f"Written: {made.written} files. Open {out}/START.html.", file=sys.stderr)
    return codes.of(report, args.trace)
