"""Count how deep each part of a device lies: steps, tools, screws, plugs, what is used up, and EU points.

All of it is an estimate from the record, no declared index. With --role PART=BAT (DA, BC, FFC, RFC, EC, BUT, MIC,
SPK, FM) the parameters of the index are told too; with --given SSP=3 --given SSU=5 --given SRI=3 the index itself.
"""

import sys
from argparse import ArgumentParser, Namespace
from typing import TYPE_CHECKING

from guidebuild.cli import asking, codes, reporting

if TYPE_CHECKING:
    from decimal import Decimal

GIVEN = ("SSP", "SSU", "SRI")


def arguments(parser: ArgumentParser) -> None:
    """What `depth` takes."""
    parser.add_argument("device", metavar="DEVICE", help="id of the device")
    parser.add_argument("--content", metavar="PATH", help="content folder (usual: content)")
    parser.add_argument("--json", metavar="FILE", help="the same as data; - for standard output")
    parser.add_argument("--chart", metavar="FILE", help="what must come off for what, as SVG")
    parser.add_argument(
        "--role", metavar="PART=ROLE", action="append", default=[], help="a priority part"
    )
    parser.add_argument(
        "--given", metavar="NAME=POINTS", action="append", default=[], help="SSP, SSU or SRI"
    )
    parser.add_argument("--folding", action="store_true", help="the weights of a device that folds")


def run(args: Namespace) -> int:
    """Measure, and tell it in each form that was asked for."""
    from json import dumps

    from guidebuild.build.depth import depth_of
    from guidebuild.plan.depth.chart import chart
    from guidebuild.plan.depth.table import ABSENT, COUNTED, as_data, index, table
    from guidebuild.plan.index import LABEL, TIE, weights

    device, rows = depth_of(asking.whole(args.content).root, args.device)
    roles = _pairs(args.role, [part.id for part in device.parts], list(weights(args.folding)))
    given = {name: _points(value) for name, value in _pairs(args.given, GIVEN, None).items()}
    found = index(rows, roles, given, args.folding)
    if args.chart:
        reporting.replace(args.chart, chart(device, [row.depth for row in rows], LABEL))
        print(f"Written: {args.chart}", file=sys.stderr)
    if args.json:
        text = dumps(as_data(device, rows, found), indent=1, ensure_ascii=False) + "\n"
        reporting.print_out(text) if args.json == "-" else reporting.replace(args.json, text)
    if args.json != "-":
        lines = [table(device, rows), COUNTED, f"Points: depth, fasteners, tools; {LABEL}."]
        if roles:
            lines += [
                ", ".join(f"{name} {value}" for name, value in found.parameters.items()),
                ABSENT,
            ]
        if found.index is not None:
            lines.append(f"Index {found.index}, class {found.letter}; {TIE}.")
        reporting.print_out("\n".join(lines) + "\n")
    return codes.CLEAN


def _pairs(
    told: list[str], names: list[str] | tuple[str, ...], values: list[str] | None
) -> dict[str, str]:
    from guidebuild.build.trouble import Trouble
    from guidebuild.cli.spelling import did_you_mean

    found = {}
    for one in told:
        name, _, value = one.partition("=")
        if name not in names:
            raise Trouble(f"There is no {name} here. {did_you_mean(name, list(names))}")
        if values is not None and value not in values:
            raise Trouble(f"{one}: the role is one of {', '.join(values)}.")
        found[name] = value
    return found


def _points(text: str) -> "Decimal":
    from decimal import Decimal, InvalidOperation

    from guidebuild.build.trouble import Trouble

    try:
        points = Decimal(text)
    except InvalidOperation:
        points = Decimal(0)
    if not points.is_finite() or not 1 <= points <= 5:
        raise Trouble(f"{text} is no score: points go from 1 to 5.")
    return points
