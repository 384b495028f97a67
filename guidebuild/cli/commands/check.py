"""Take the device apart in memory, in every configuration, and tell what does not work out.

PATH is a content folder, a folder in it, or one guide; where none is given, the folder `content`, or else
the one that you are in.
"""

from argparse import ArgumentParser, Namespace

from guidebuild.cli import asking, codes, reporting


def arguments(parser: ArgumentParser) -> None:
    """What `check` takes."""
    asking.arguments(parser)
    reporting.arguments(parser)
    parser.add_argument(
        "--since",
        metavar="FILE",
        help="tell only what is new against an earlier JSON report (matched by rule, guide, step and text)",
    )


def run(args: Namespace) -> int:
    """Check, write the reports, and say by the exit code what came of it."""
    reports = reporting.wanted(args.report)
    content = asking.asked(args.path)
    # Only now what is slow to load: wrong use is told at once.
    from guidebuild.build.check import check
    from guidebuild.build.since import since
    from guidebuild.cli.progress import Bar

    earlier = since(args.since) if args.since else None
    bar = Bar("Checking")
    try:
        result = check(content.root, content.within, jobs=args.jobs, progress=bar)
    finally:
        bar.close()
    report = result.report(asking.prefix(content.root), earlier)
    reporting.write(reports, report)
    return codes.of(report, args.trace)
