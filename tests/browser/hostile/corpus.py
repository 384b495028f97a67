"""Words that would run, load or lead somewhere if a page took them for more than words.

`payloads.txt` has a shape a line, ␊ standing for a line break: elements and handlers, contexts to break out of,
encodings, addresses in Markdown, templates, names that a script may trip over. Written down from the families that
public collections of cross-site scripting tests have in common (from memory); each calls `alert(1)` or asks
127.0.0.1:9 for something.
"""

from pathlib import Path

PAYLOADS = tuple(
    line.replace("␊", "\n")
    for line in (Path(__file__).parent / "payloads.txt").read_text(encoding="utf-8").splitlines()
)


def nth(number: int) -> str:
    """The payload of a number, round and round."""
    return PAYLOADS[number % len(PAYLOADS)]
