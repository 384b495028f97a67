"""Content that was right, broken the way a hand breaks it: letters lost, doubled, swapped; quotes left out.

`python -m tests.build.breaking 1000` breaks and mends so many and says what came of them.
"""

import re
import shutil
import sys
import tempfile
from collections import Counter
from functools import partial
from pathlib import Path
from random import Random

from guidebuild.build.check import check
from guidebuild.build.fix import Fixed, fix
from guidebuild.build.result import CheckResult

LAMP = Path(__file__).parents[1] / "whole" / "projects" / "lamp" / "content"
WORD = re.compile(r"[a-z][a-z0-9-]{3,}")
QUOTED = re.compile(r'"[^"\n]+"')
FILES = ("guides/brill-7/change-lamp.md", "devices/brill-7/device.yaml", "tools.yaml")
without_cache = partial(check, jobs=1, cache=False)


def broken(text: str, random: Random) -> str:
    """The text with one word of its records, blocks or front matter misspelt, or a pair of quotes less."""
    quotes = list(QUOTED.finditer(text))
    if quotes and random.random() < 0.2:
        found = random.choice(quotes)
        return text[: found.start()] + found[0][1:-1] + text[found.end() :]
    found = random.choice(list(WORD.finditer(text)))
    return text[: found.start()] + misspelt(found[0], random) + text[found.end() :]


def misspelt(word: str, random: Random) -> str:
    """One slip of the finger."""
    at = random.randrange(len(word) - 1)
    slips = (
        word[:at] + word[at + 1 :],
        word[:at] + word[at] * 2 + word[at + 1 :],
        word[:at] + word[at + 1] + word[at] + word[at + 2 :],
        word[:at] + random.choice("aeinrst") + word[at + 1 :],
    )
    return random.choice(slips)


def lay_out(folder: Path, seed: int) -> Path:
    """The lamp's content with one to three slips in it."""
    random = Random(seed)
    content = folder / "content"
    shutil.copytree(LAMP, content)
    for _ in range(random.randint(1, 3)):
        path = content / random.choice(FILES)
        path.write_text(broken(path.read_text(encoding="utf-8"), random), encoding="utf-8")
    return content


def counts(result: CheckResult) -> Counter[str]:
    """How many findings of each rule."""
    return Counter(slip.finding.rule for slip in result.slips)


def tried(seed: int) -> tuple[CheckResult, Fixed, Fixed]:
    """A broken content before mending, after it, and after mending again what was mended."""
    with tempfile.TemporaryDirectory() as folder:
        content = lay_out(Path(folder), seed)
        before = without_cache(content)
        first = fix(content, without_cache)
        for path, text in first.after.items():
            (content / path).write_text(text, encoding="utf-8")
        return before, first, fix(content, without_cache)


def grown(before: CheckResult, after: CheckResult) -> Counter[str]:
    """Rules with more findings than before; what a guide that was not proved hid is not counted."""
    return Counter() if before.unproved else counts(after) - counts(before)


if __name__ == "__main__":
    said: Counter[str] = Counter()
    for seed in range(int(sys.argv[1])):
        before, first, again = tried(seed)
        said["broken" if before.slips else "still right"] += 1
        said["findings before"] += len(before.slips)
        said["findings after"] += len(first.result.slips)
        said["mended"] += first.mended
        said["made worse"] += bool(grown(before, first.result))
        said["changed when mended again"] += bool(again.after)
        said["right again"] += bool(before.slips) and not first.result.slips
    print(dict(said))
