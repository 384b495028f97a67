"""`--part K/N`: one part of a check or a build, for a build server that spreads the work over machines."""

import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path
from typing import TYPE_CHECKING

from guidebuild.cli import asking, codes, reporting

if TYPE_CHECKING:
    from guidebuild.build.place import Asked


def arguments(parser: ArgumentParser) -> None:
    """Add the option to a command."""
    parser.add_argument(
        "--part",
        metavar="K/N",
        help="only the K-th of N parts, into the folder --out (usual: part-K-of-N); "
        "`guidebuild join` puts all of them together",
    )


def run(args: Namespace, content: "Asked", *, pages: bool) -> int:
    """Make the part. What was found is told when all are joined, and here only in the reports that were asked for.

    So the exit code is 0 where the part was made, whatever stands in it.
    """
    from guidebuild.build.parts.make import Wanted, make_part
    from guidebuild.build.parts.share import share
    from guidebuild.cli.progress import Bar
    from guidebuild.reports.parts import words

    mine = share(args.part)
    reports = [reporting.one(each) for each in args.report]
    out = args.out or f"part-{mine.number}-of-{mine.of}"
    languages = tuple(filter(None, args.languages.split(","))) if pages else ()
    prefix = asking.prefix(content.root)
    wanted = Wanted(mine, Path(out), pages, languages, args.jobs, prefix)
    bar = Bar("Building" if pages else "Checking")
    try:
        result, guides = make_part(content.root, wanted, bar)
    finally:
        bar.close()
    report = result.report(prefix)
    reporting.write(reports, report)
    for fault in report.faults:
        print(f"guidebuild: {words.fault(fault)}", file=sys.stderr)
    print(f"Part {mine}: {words.count(guides, 'guide')}, in {out}.", file=sys.stderr)
    return codes.FAULT if codes.of(report, args.trace) == codes.FAULT else codes.CLEAN
