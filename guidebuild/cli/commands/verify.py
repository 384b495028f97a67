"""Look whether a stick still holds what was written on it: each changed, missing or added file by name."""

import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path

from guidebuild.cli import codes


def arguments(parser: ArgumentParser) -> None:
    """What `verify` takes."""
    parser.add_argument("place", metavar="PLACE", help="the stick's folder")


def run(args: Namespace) -> int:
    """Check every file, and say what is wrong."""
    from guidebuild.build.trouble import Trouble
    from guidebuild.cli.progress import Bar
    from guidebuild.handover.verify import verify

    place = Path(args.place)
    if not place.is_dir():
        raise Trouble(
            f"{place} is no folder. Name the stick's folder, the one with SHA256SUMS in it."
        )
    bar = Bar("Checking")
    try:
        good, found = verify(place, bar)
    except OSError as error:
        raise Trouble(f"Can't read {error.filename or place}: {error.strerror}.") from error
    finally:
        bar.close()
    for one in found:
        where = f"{one.path}, line {one.line}" if one.line else one.path
        print(f"{where}: {one.trouble}")
    if found:
        print(
            f"{good} files are as they were written, {len(found)} are not. Pack it again.",
            file=sys.stderr,
        )
        return codes.FINDINGS
    print(f"All {good} files are as they were written.")
    return codes.CLEAN
