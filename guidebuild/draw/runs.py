"""What the drawings of a page have in common, said once: a device looks much the same from step to step.

A drawing is a row of pieces of markup, one for each layer or hole, empty where nothing is shown. Rows are halved
again and again; halves that are alike anywhere in the page become one symbol, and drawings refer to it.
"""

from collections.abc import Sequence
from typing import NewType

from guidebuild.draw.svg import element, use

Run = NewType("Run", int)

EMPTY = Run(0)
_SHORT = 40  # characters: what is shorter than this is not worth a reference


class Runs:
    """All runs of one page. First every drawing is added, then each is written; `prefix` keeps ids apart."""

    def __init__(self, prefix: str = "_") -> None:
        self._prefix = prefix
        self._leaves: dict[str, Run] = {"": EMPTY}
        self._pairs: dict[tuple[Run, Run], Run] = {}
        self._inside: list[str | tuple[Run, Run]] = [""]
        self._asked: list[int] = [0]  # how often each is referred to
        self._said: dict[Run, str] = {EMPTY: ""}
        self._symbols: dict[Run, str] = {}
        self._whole: list[Run] = []

    def add(self, pieces: Sequence[str]) -> Run:
        """A drawing's pieces. Rows of the same view must have the same places, so that halves can be alike."""
        leaves = self._leaves
        runs = []
        for piece in pieces:
            run = leaves.get(piece)
            runs.append(self._leaf(piece) if run is None else run)
        while len(runs) > 1:
            if len(runs) % 2:
                runs.append(EMPTY)
            runs = [
                self._pair(one, other) for one, other in zip(runs[::2], runs[1::2], strict=True)
            ]
        whole = runs[0] if runs else EMPTY
        self._asked[whole] += 1
        self._whole.append(whole)
        return whole

    def _leaf(self, piece: str) -> Run:
        self._leaves[piece] = run = self._new(piece)
        return run

    def _pair(self, one: Run, other: Run) -> Run:
        if not one or not other:
            return one or other
        pair = one, other
        run = self._pairs.get(pair)
        if run is None:
            self._pairs[pair] = run = self._new(pair)
            self._asked[one] += 1
            self._asked[other] += 1
        return run

    def _new(self, inside: str | tuple[Run, Run]) -> Run:
        self._inside.append(inside)
        self._asked.append(0)
        return Run(len(self._inside) - 1)

    def written(self, run: Run) -> str:
        """The markup of a run: itself, or a reference to its symbol. To be asked when all are added."""
        said = self._said.get(run)
        if said is None:
            inside = self._inside[run]
            said = inside if isinstance(inside, str) else "".join(map(self.written, inside))
            if self._asked[run] > 1 and len(said) > _SHORT:
                name = f"{self._prefix}{len(self._symbols):x}"
                self._symbols[run] = element("g", said, id=name)
                said = use(name)
            self._said[run] = said
        return said

    def symbols(self) -> str:
        """All symbols that are referred to: once in the page, when all drawings are added."""
        for run in self._whole:
            self.written(run)
        return "".join(self._symbols.values())
