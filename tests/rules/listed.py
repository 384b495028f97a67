"""The rules by their subject, as `listed.txt` names them."""

from itertools import takewhile

from tests.rules.fixture import HERE


def headings() -> list[str]:
    """The subjects, in order."""
    lines = (HERE / "listed.txt").read_text(encoding="utf-8").splitlines()
    return [line[2:] for line in lines if line.startswith("# ")]


def listed(*subjects: str) -> list[str]:
    """The names under these headings; without a heading, all of them."""
    lines = (HERE / "listed.txt").read_text(encoding="utf-8").splitlines()
    heads = [number for number, line in enumerate(lines) if line.startswith("# ")]
    names: list[str] = []
    for number in heads:
        if not subjects or lines[number][2:] in subjects:
            names += " ".join(takewhile(bool, lines[number + 1 :])).split()
    return names
