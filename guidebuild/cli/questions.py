"""Short questions on a terminal; a script, which has none, gets the usual answer."""

import sys


def answer(given: str | None, question: str, usual: str = "") -> str:
    """What a flag gave, else what is typed, else the usual."""
    if given is not None:
        return given
    if not (sys.stdin.isatty() and sys.stderr.isatty()):
        return usual
    print(f"{question}{f' [{usual}]' if usual else ''} ", end="", file=sys.stderr, flush=True)
    return sys.stdin.readline().strip() or usual


def several(given: str | None, question: str) -> list[str]:
    """Names with commas in a flag; on a terminal one a line, until an empty one."""
    if given is not None:
        return [one.strip() for one in given.split(",") if one.strip()]
    found: list[str] = []
    while word := answer(None, question if not found else "  and then?"):
        found.append(word)
    return found
