"""Put parts together that `check --part` or `build --part` made, on one machine or on many.

The report is that of a single check, the site that of a single build, byte by byte. The content itself is not
needed here.
"""

import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path

from guidebuild.cli import codes, reporting


def arguments(parser: ArgumentParser) -> None:
    """What `join` takes."""
    parser.add_argument("parts", metavar="PART", nargs="+", help="the folders of all parts")
    parser.add_argument(
        "--out", metavar="FOLDER", help="where the site goes; without it, only reports"
    )
    parser.add_argument(
        "--since", metavar="FILE", help="tell only what is new against an earlier JSON report"
    )
    reporting.arguments(parser)


def run(args: Namespace) -> int:
    """Join, write the reports, and say by the exit code what came of it."""
    reports = reporting.wanted(args.report)
    # Only now what is slow to load: wrong use is told at once.
    from guidebuild.build.parts.join import join
    from guidebuild.build.since import since

    earlier = since(args.since) if args.since else None
    joined = join([Path(part) for part in args.parts], Path(args.out) if args.out else None)
    report = joined.result.report(joined.prefix, earlier)
    reporting.write(reports, report)
    if joined.written:
        print(f"Written: {joined.written} files. Open {args.out}/START.html.", file=sys.stderr)
    return codes.of(report, args.trace)
