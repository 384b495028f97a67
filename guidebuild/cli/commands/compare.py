"""Tell two records or two guides apart in the trade's terms, with every step that the difference touches.

NAME is the id of a device, or a guide as a path in the content folder (guides/larch-p2/replace-the-battery.md). With
one NAME and --since COMMIT, it is compared with itself at that commit; --until is another commit (usual: now).
"""

import sys
from argparse import ArgumentParser, Namespace

from guidebuild.cli import asking, codes, reporting


def arguments(parser: ArgumentParser) -> None:
    """What `compare` takes."""
    parser.add_argument("names", metavar="NAME", nargs="+", help="one or two records or guides")
    parser.add_argument("--since", metavar="COMMIT", default="", help="the first as it stood there")
    parser.add_argument(
        "--until", metavar="COMMIT", default="", help="the second as it stood there"
    )
    parser.add_argument("--content", metavar="PATH", help="content folder (usual: content)")
    parser.add_argument("--page", metavar="FILE.html", help="write it as a page, too")


def run(args: Namespace) -> int:
    """Print the differences; the exit code tells whether there are any."""
    from guidebuild.build.comparing import compare
    from guidebuild.build.trouble import Trouble
    from guidebuild.plan.compare.telling import page, text

    if len(args.names) > 2 or (len(args.names) == 1 and not args.since):
        raise Trouble("Name two records or two guides; or one, and --since with a commit.")
    found = compare(asking.whole(args.content).root, args.names, args.since, args.until)
    if args.page:
        reporting.replace(args.page, page(found.one, found.other, found.found))
        print(f"Written: {args.page}", file=sys.stderr)
    reporting.print_out(text(found.one, found.other, found.found))
    return codes.FINDINGS if found.found else codes.CLEAN
