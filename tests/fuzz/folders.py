"""A content folder of which one file is damaged: read, proved, put before all rules, drawn; nothing may fall over."""

import tempfile
from collections.abc import Callable, Iterator
from functools import cache, partial
from pathlib import Path

from guidebuild.build.check import result_of
from guidebuild.build.outputs import makers
from guidebuild.build.run import run
from guidebuild.build.site_files import load_file
from guidebuild.build.translations import translation
from guidebuild.read.files import folder, guide_paths
from guidebuild.read.report import Report
from tests.language.test_samples import samples

_ROOM = tempfile.TemporaryDirectory(prefix="guidebuild-fuzz-")
PLACES = {
    "guide": "guides/larch-p2/replace-the-print-head.md",
    "stage": "guides/larch-p2/shared/make-safe.md",
    "record": "devices/larch-p2/device.yaml",
    "kit": "kits/larch-head.yaml",
    "settings": "guidebuild.yaml",
    "tools": "tools.yaml",
    "terms": "terms.yaml",
}
_STAGE = """\
---
device: larch-p2
---

## Wait until it is cool

```wait
time: 2 min
reason: The head is hot.
```

Wait.
"""


@cache
def sound() -> dict[str, str]:
    """The commented samples of `schema/samples`, and a shared stage that the guide begins with."""
    files = {**samples(), PLACES["stage"]: _STAGE}
    guide = files[PLACES["guide"]]
    files[PLACES["guide"]] = guide.replace(
        "\n# ", "\n# [Make it safe](shared/make-safe.md)\n\n# ", 1
    )
    return files


@cache
def laid() -> Path:
    """The folder, sound."""
    root = Path(_ROOM.name) / "content"
    for place, text in sound().items():
        (root / place).parent.mkdir(parents=True, exist_ok=True)
        (root / place).write_text(text, encoding="utf-8")
    return root


def whole(place: str) -> str:
    """A file of it as it should be."""
    return sound()[PLACES[place]]


def reads(place: str, pages: bool = False) -> Callable[[bytes], None]:
    """The whole way of a check, and with `pages` that of a build, with these bytes in a place of the folder."""

    def read(data: bytes) -> None:
        path = laid() / PLACES[place]
        sound = path.read_bytes()
        path.write_bytes(data)
        try:
            checked(laid(), pages)
        finally:
            path.write_bytes(sound)

    return read


def checked(root: Path, pages: bool) -> None:
    """A fault of ours is caught by the run and told: here it is raised again."""
    paths = sorted(guide_paths(folder(root, Report())))
    batch = run(root, paths, lambda done: None, rest=True, keep=True)
    result = result_of(batch, whole=True)
    told = [fault.trace for fault in result.faults]
    if told:
        raise AssertionError("\n".join(told))
    for slip in result.slips:
        span = slip.finding.span
        assert 0 <= span.start <= span.end <= max(len(span.source.text), span.start), slip
    if pages and batch.content is not None and batch.proofs:
        shown = [proof.guide.path for proof in batch.proofs]
        pseudo = translation(root, batch.content, "en-XA", shown)
        for _, make in makers():
            make(batch.content, batch.proofs, partial(load_file, root), (pseudo,))


def places() -> Iterator[tuple[str, str, Callable[[bytes], None]]]:
    """Name, sound text and reader of each file; the guide and the record also as far as the page."""
    for place in PLACES:
        yield place, whole(place), reads(place)
    for place in ("guide", "record"):
        yield f"{place}-page", whole(place), reads(place, pages=True)
