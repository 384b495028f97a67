"""Take the device apart in memory, in every configuration, and tell what does not work out.

PATH is a content folder, a folder in it, or one guide; where none is given, the folder `content`, or else
the one that you are in.
"""

import sys
from argparse import ArgumentParser, Namespace
from typing import TYPE_CHECKING

from guidebuild.cli import asking, codes, parting, reporting

if TYPE_CHECKING:
    from guidebuild.build.place import Asked
    from guidebuild.build.result import CheckResult


def arguments(parser: ArgumentParser) -> None:
    """What `check` takes."""
    asking.arguments(parser)
    reporting.arguments(parser)
    parting.arguments(parser)
    parser.add_argument("--out", metavar="FOLDER", help="with --part: where the part goes")
    parser.add_argument(
        "--since",
        metavar="FILE",
        help="tell only what is new against an earlier JSON report, whatever moved to another line",
    )
    parser.add_argument(
        "--no-cache", action="store_true", help="work out everything anew, and remember nothing"
    )
    parser.add_argument(
        "--fix",
        action="store_true",
        help="first mend what has one safe answer (spelling, quotes, order)",
    )
    parser.add_argument(
        "--dry-run", action="store_true", help="with --fix: show the difference, write nothing"
    )


def run(args: Namespace) -> int:
    """Check, write the reports, and say by the exit code what came of it."""
    if args.part:
        return _part(args)
    reports = reporting.wanted(args.report)
    content = asking.asked(args.path)
    # Only now what is slow to load: wrong use is told at once.
    from guidebuild.build.since import since

    earlier = since(args.since) if args.since else None
    result = _fixed(args, content) if args.fix or args.dry_run else _checked(args, content)
    report = result.report(asking.prefix(content.root), earlier)
    reporting.write(reports, report)
    return codes.of(report, args.trace)


def _part(args: Namespace) -> int:
    from guidebuild.build.trouble import Trouble

    if args.fix or args.dry_run or args.since:
        raise Trouble(
            "--part goes with none of --fix, --dry-run and --since; `join` takes --since."
        )
    return parting.run(args, asking.whole(args.path), pages=False)


def _checked(args: Namespace, content: "Asked") -> "CheckResult":
    from guidebuild.build.check import check
    from guidebuild.cli.progress import Bar

    bar = Bar("Checking")
    try:
        cache = not args.no_cache
        return check(content.root, content.within, jobs=args.jobs, cache=cache, progress=bar)
    finally:
        bar.close()


def _fixed(args: Namespace, content: "Asked") -> "CheckResult":
    """What is left after mending; with `--dry-run` the difference is shown and nothing is written."""
    from guidebuild.build.check import check
    from guidebuild.build.fix import fix, put
    from guidebuild.cli.difference import difference
    from guidebuild.reports.parts.words import count

    fixed = fix(content.root, lambda root: check(root, content.within, jobs=args.jobs, cache=False))
    shown = difference(fixed, asking.prefix(content.root))
    if args.dry_run:
        reporting.print_out(shown)
    else:
        put(content.root, fixed)
    done = "Would mend" if args.dry_run else "Mended"
    where = count(len(fixed.after), "file")
    print(f"{done}: {count(fixed.mended, 'finding')} in {where}.", file=sys.stderr)
    return fixed.result
