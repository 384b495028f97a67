"""Write the notes of fixtures anew (`--write [RULE ...]`), begin a rule (`--new RULE`), or count (`--table`).

`--doubtful` prints what rules that may be wrong say of good guides, `--mended` what is offered and mended.

The difference that `--write` makes is what to review. A new rule begins with a test that fails.
"""

import argparse
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

from tests.rules.census import doubtful, offering, table
from tests.rules.fixture import HERE, Fixture, fixtures
from tests.rules.notes import cut, put_in

RULES = HERE.parents[1] / "guidebuild" / "rules"

RULE = '''"""One line: what is wrong.

Why it matters to the person on the bench: what happens with the screw in the hand when nobody told.

Source: common practice, no source.
"""

from collections.abc import Iterator

from guidebuild.proof.hit import Hit, Rule
from guidebuild.proof.proof import Proof
from guidebuild.source.finding import Category

RULE = Rule(category=Category.SUSPICIOUS)

MESSAGE = "one sentence: what is wrong where the span points"

HELP = "what to do"


def check(proof: Proof) -> Iterator[Hit]:
    yield from ()
'''

GUIDE = """---
title: Look inside
device: larch-p2
goal: {{inspect: main-board}}
starts: {{device: off}}
---

{intro}

# Open the printer

## Lift the cover off its seal
{note}
```part
lift: cover
undo: [cover-screws, cover-clips]
```

## Lower the cover

```joint
renew: cover-seal
```

```part
lower: cover
do-up: cover-screws
```
"""


def write(one: Fixture) -> bool:
    """Put into the fixture's files what the rule says now; whether that changed any."""
    found, others = one.found()
    for other in others:
        print(f"{one.path}: the reader says: {other.span.line}: {other.rule}: {other.message}")
    changed = False
    for path, notes in found.items():
        before = path.read_text(encoding="utf-8")
        after = put_in(cut(before)[0], notes)
        if after != before and path.parent != HERE:
            path.write_text(after, encoding="utf-8")
            changed = True
    return changed


def new(name: str) -> None:
    """A rule's file and its two fixtures; nothing that is there is touched."""
    note = f"   ^^^^^^^^^^^^^^^^^^^^^^^^^^ %% {name}: one sentence: what is wrong where the span points\n"
    folder = HERE / name
    folder.mkdir(exist_ok=True)
    bad = GUIDE.format(intro="What is wrong in this guide, in a sentence.", note=note)
    _begin(RULES / f"{name.replace('-', '_')}.py", RULE)
    _begin(folder / "bad-one.md", bad)
    _begin(folder / "good-one.md", GUIDE.format(intro="Why this one is right.", note=""))


def _begin(path: Path, text: str) -> None:
    if path.exists():
        print(f"{path.name} is there already")
    else:
        path.write_text(text, encoding="utf-8")
        print(f"begun: {path.relative_to(HERE.parents[1])}")


def doubtful_lines() -> Iterator[str]:
    """A line a finding, then how many each rule has."""
    found = list(doubtful())
    for where, one in found:
        yield f"{where}:{one.span.line}: {one.rule}: {one.message}"
    for rule, number in Counter(one.rule for _, one in found).most_common():
        yield f"{number:5}  {rule}"


def mended_lines() -> Iterator[str]:
    """A line a fixture whose rule offers something."""
    found = list(offering())
    for one, left in found:
        yield f"{one.rule}/{one.path.name}: {left or 'nothing'} left"
    yield f"{len(found)} fixtures of {len({one.rule for one, _ in found})} rules"


COUNTS = {"table": table, "doubtful": doubtful_lines, "mended": mended_lines}


def main() -> None:
    """What the command line asks for."""
    parser = argparse.ArgumentParser(prog="python -m tests.rules", description=__doc__)
    parser.add_argument("--write", nargs="*", metavar="RULE")
    parser.add_argument("--new", metavar="RULE")
    for name in COUNTS:
        parser.add_argument(f"--{name}", action="store_true")
    asked = parser.parse_args()
    if asked.new:
        new(asked.new)
    elif asked.write is not None:
        for one in fixtures():
            if (not asked.write or one.rule in asked.write) and write(one):
                print(f"written: {one.rule}/{one.path.name}")
    elif not any(getattr(asked, name) for name in COUNTS):
        parser.print_help()
    for name, lines in COUNTS.items():
        if getattr(asked, name):
            print("\n".join(lines()))


if __name__ == "__main__":
    main()
