"""Say what a rule is about and how to mend what it finds, or what may be written in a block or a file.

WORD is a rule's name as a finding tells it; or a block (`fastener`), a file (`guide`, `device`, `kit`, `settings`), a
section of the device record (`joints`).
"""

import sys
from argparse import ArgumentParser, Namespace

from guidebuild.cli import codes, reporting


def arguments(parser: ArgumentParser) -> None:
    """What `explain` takes."""
    parser.add_argument("word", metavar="WORD", nargs="?", help="its name; without it, all names")
    parser.add_argument("--all", metavar="FILE", help="write all rules into one page of HTML")


def run(args: Namespace) -> int:
    """Print a card, or the names of all rules with their summaries, and of what else there is."""
    from guidebuild.build import rulebook
    from guidebuild.cli.explaining import explained
    from guidebuild.cli.spelling import did_you_mean
    from guidebuild.cli.topic_card import topic_card
    from guidebuild.read.shape.topics import topic, topic_names

    if args.all is not None:
        from guidebuild.cli.rules_page import rules_page

        reporting.replace(args.all, rules_page())
        return codes.CLEAN
    if args.word is None:
        print(_all_names())
        return codes.CLEAN
    if args.word in rulebook.names():
        print(explained(args.word))
        return codes.CLEAN
    if args.word in topic_names():
        print(topic_card(topic(args.word)))
        return codes.CLEAN
    near = did_you_mean(args.word, (*rulebook.names(), *topic_names()))
    print(f"guidebuild: there is nothing called {args.word} here. {near}", file=sys.stderr)
    return codes.WRONG_USE


def _all_names() -> str:
    from guidebuild.build import rulebook
    from guidebuild.read.shape.topics import topic, topic_names

    rules = [(name, rulebook.card(name).summary) for name in rulebook.names()]
    topics = [(name, topic(name).about) for name in topic_names()]
    width = max(len(name) for name, _ in rules + topics)
    return "\n".join(f"{name.ljust(width)}  {about}" for name, about in rules + topics)
