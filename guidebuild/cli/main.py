"""The way in: finds the command, runs it, and turns what went wrong into a sentence and an exit code."""

import gc
import os
import sys
from argparse import ArgumentParser, RawDescriptionHelpFormatter
from collections.abc import Sequence
from importlib import import_module
from types import ModuleType

from guidebuild import __version__
from guidebuild.cli.codes import FAULT, STOPPED, WRONG_USE

COMMANDS = "guidebuild.cli.commands"
CODES = """\
ends with 0 when there is nothing to say, 1 when something was found (a note does not count),
2 when it was called wrongly, 3 when it is our fault."""


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command; the exit code of `CODES`."""
    from guidebuild.build.trouble import Trouble

    # Guides and proofs are trees that live to the end of the run: looking for circles early finds nothing.
    gc.set_threshold(50_000, 20, 100)
    words = list(sys.argv[1:] if argv is None else argv)
    try:
        return _run(words)
    except Trouble as trouble:
        print(f"guidebuild: {trouble}", file=sys.stderr)
        return WRONG_USE
    except KeyboardInterrupt:
        print("\nStopped. Nothing was left half-written.", file=sys.stderr)
        return STOPPED
    except BrokenPipeError:
        # Whoever read our output has gone (`| head`): say nothing more, not even when Python shuts down.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return FAULT
    except Exception as error:
        return _fault(error, "--trace" in words)


def _run(words: list[str]) -> int:
    commands = _commands()
    if words and not words[0].startswith("-") and words[0] not in commands:
        return _misspelt(words[0], list(commands))
    args = _parser(commands).parse_args(words)
    code = commands[args.command].run(args)
    sys.stdout.flush()
    return int(code)


def _commands() -> dict[str, ModuleType]:
    """Each command's name and module, in order of the names."""
    folder = os.path.join(os.path.dirname(__file__), "commands")
    files = sorted(name for name in os.listdir(folder) if name.endswith(".py") and name[0] != "_")
    names = [name.removesuffix(".py") for name in files]
    return {name.replace("_", "-"): import_module(f"{COMMANDS}.{name}") for name in names}


def _parser(commands: dict[str, ModuleType]) -> ArgumentParser:
    about = (sys.modules["guidebuild"].__doc__ or "").partition(": ")[2]
    parser = ArgumentParser(
        "guidebuild", description=about, epilog=CODES, formatter_class=RawDescriptionHelpFormatter
    )
    parser.add_argument("--version", action="version", version=f"guidebuild {__version__}")
    each = parser.add_subparsers(dest="command", metavar="COMMAND", required=True)
    for name, module in commands.items():
        first, _, rest = (module.__doc__ or "").partition("\n")
        command = each.add_parser(
            name,
            help=first,
            description=f"{first}\n{rest}".strip(),
            epilog=CODES,
            formatter_class=RawDescriptionHelpFormatter,
        )
        command.add_argument("--trace", action="store_true", help="tell all of a fault of ours")
        module.arguments(command)
    return parser


def _misspelt(word: str, known: list[str]) -> int:
    from guidebuild.cli.spelling import did_you_mean

    print(f"guidebuild: there is no command {word}. {did_you_mean(word, known)}", file=sys.stderr)
    return WRONG_USE


def _fault(error: Exception, trace: bool) -> int:
    from guidebuild.build.fault import fault
    from guidebuild.reports.parts import words

    found = fault(error)
    print(f"guidebuild: {words.fault(found)}", file=sys.stderr)
    if trace:
        print(found.trace, file=sys.stderr)
    return FAULT
