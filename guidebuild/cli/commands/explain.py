"""Say what a rule is about, why it matters on the bench, and how to mend what it finds.

RULE is a rule's name as a finding tells it.
"""

import sys
from argparse import ArgumentParser, Namespace

from guidebuild.cli import codes, reporting


def arguments(parser: ArgumentParser) -> None:
    """What `explain` takes."""
    parser.add_argument("rule", metavar="RULE", nargs="?", help="its name; without it, all names")
    parser.add_argument("--all", metavar="FILE", help="write all rules into one page of HTML")


def run(args: Namespace) -> int:
    """Print the rule's card, or all rules with their summaries."""
    from guidebuild.build import rulebook
    from guidebuild.cli.explaining import explained
    from guidebuild.cli.spelling import did_you_mean

    if args.all is not None:
        from guidebuild.cli.rules_page import rules_page

        reporting.replace(args.all, rules_page())
        return codes.CLEAN
    if args.rule is None:
        width = max(map(len, rulebook.names()), default=0)
        for name in rulebook.names():
            print(f"{name.ljust(width)}  {rulebook.card(name).summary}")
        return codes.CLEAN
    if args.rule not in rulebook.names():
        near = did_you_mean(args.rule, rulebook.names())
        print(f"guidebuild: there is no rule {args.rule}. {near}", file=sys.stderr)
        return codes.WRONG_USE
    print(explained(args.rule))
    return codes.CLEAN
