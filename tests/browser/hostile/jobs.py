"""`python -m tests.browser.hostile.jobs [COUNT]`: damaged job records loaded into a guide; none stops the page."""

import json
import random
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from tests.browser.chrome import Browser, started
from tests.browser.hostile.looking import seen, watching

BATCH = 50
_ODD: tuple[Any, ...] = (
    None, True, 0, -1, 1e308, 2**63, "", "x", "\0", "\u202e", "<img src=x onerror=alert(1)>", "__proto__", "z" * 5000,
    [], [[]], {}, {"__proto__": 1}, {"length": 9}, ["x", 1], ["x", 1e13], ["x", "y"], [None, None], [{}, []],
)  # fmt: skip
_GRAMMAR = (
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    '"',
    "\\",
    "\\u0000",
    "\\ud800",
    "1e999",
    "-",
    "null",
    "\ufeff",
    " ",
)


def job(guide: str, ids: list[str]) -> dict[str, Any]:
    """A sound record of a guide, all of whose fields are filled in."""
    entries = {name: ["7", 1_700_000_000_000 + number] for number, name in enumerate(ids)}
    answers = {"revision": "b", "form": "bare"}
    line = {"step": "x", "what": "y", "value": "7", "at": "2026-01-01T00:00:00.000Z"}
    head = {"record": 1, "guide": guide, "title": "T", "language": "en", "saved": "2026-01-01"}
    return {**head, "answers": answers, "since": 0, "entries": entries, "lines": [line]}


def damaged(whole: dict[str, Any], count: int, seed: int = 7) -> Iterator[str]:
    """The record with odd values in it, or as text with pieces lost, doubled or put in."""
    dice = random.Random(seed)
    for _ in range(count):
        one = json.loads(json.dumps(whole))
        for _ in range(dice.randrange(3)):
            _spoil(one, dice)
        text = json.dumps(one, ensure_ascii=False)
        for _ in range(dice.choice((0, 0, 1, 3))):
            at = dice.randrange(len(text) + 1)
            end = at + dice.choice((0, 1, 9, 60))
            text = text[:at] + dice.choice((*_GRAMMAR, text[at:end] * 2)) + text[end:]
        yield text.encode("utf-8", "replace").decode()


def _spoil(node: Any, dice: random.Random) -> None:
    """One value somewhere in it, or one name, is another."""
    while True:
        names = list(node) if isinstance(node, dict) else range(len(node))
        if not names:
            return
        name = dice.choice(names)
        if isinstance(node[name], (dict, list)) and node[name] and dice.random() < 0.7:
            node = node[name]
            continue
        if isinstance(node, dict) and dice.random() < 0.2:
            node[dice.choice(("__proto__", "constructor", "toString", "", "record"))] = node.pop(
                name
            )
        else:
            node[name] = json.loads(json.dumps(dice.choice(_ODD)))
        return


def loaded(browser: Browser, page: Path, folder: Path, count: int) -> tuple[int, list[str]]:
    """How many records the page answered, and what fell over, ran, or could have run."""
    with watching(browser):
        seen(browser, page, folder)
        guide = browser.value("document.querySelector('[data-guide]').dataset.guide")
        ids = browser.ask("load_damaged", texts=[])["ids"]
        texts, answered = list(damaged(job(guide, ids), count)), 0
        wrong: list[str] = []
        for start in range(0, count, BATCH):
            told = browser.ask("load_damaged", texts=texts[start : start + BATCH])
            answered, wrong = answered + told["answered"], wrong + told["fell"]
        left = browser.ask("sinks")
        wrong += [*left["found"], *left["ran"], *browser.complaints()]
    return answered, wrong


if __name__ == "__main__":
    from guidebuild.build.make import make

    many = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    content = Path(__file__).resolve().parents[3] / "content"
    chromium = started()
    with tempfile.TemporaryDirectory() as room:
        site = Path(room) / "site"
        make(content, site)
        page = site / "en/larch-p2/replace-the-print-head.html"
        answered, wrong = loaded(chromium, page, site, many)
    chromium.driver.quit()
    print(f"{answered} of {many} answered, {len(wrong)} troubles", *wrong[:5], sep="\n")
    sys.exit(answered != many or bool(wrong))
