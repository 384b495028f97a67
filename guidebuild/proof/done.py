"""What was done in a step, kept as the walk left it; made into what others read when they read it."""

from collections.abc import Iterator, Sequence
from typing import overload

from guidebuild.device.acts import Verb
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.check import Check
from guidebuild.guide.stage import Stage
from guidebuild.guide.step import Method, Step
from guidebuild.proof.cells import Value
from guidebuild.proof.mistake import Move
from guidebuild.proof.proof import Snapshot, Walked
from guidebuild.source.span import Span


class Around:
    """Where an act or a check stands: its step as walked, and what it is part of."""

    __slots__ = ("method", "stage", "step", "where")

    def __init__(self, stage: Stage, step: Step, where: int, method: Method | None = None) -> None:
        self.stage = stage
        self.step = step
        self.where = where
        self.method = method


class Done:
    """One act on one thing, or one check, in `where`; `values` are those before it."""

    __slots__ = ("_doing", "_walked", "act", "around", "key", "span", "values", "verb", "where")

    def __init__(
        self, around: Around, verb: Verb | None, key: str, act: Act | Check, span: Span,
        where: int, values: dict[str, Value],
    ) -> None:  # fmt: skip
        self.around = around
        self.verb = verb  # None: a check
        self.key = key
        self.act = act
        self.span = span
        self.where = where
        self.values = values
        self._doing: Move | Check | None = None
        self._walked: Walked | None = None

    @property
    def doing(self) -> Move | Check:
        """The Move or the Check: one object, however often it is asked for."""
        if self._doing is None:
            if isinstance(self.act, Check):
                self._doing = self.act
            else:
                assert self.verb is not None
                self._doing = Move(self.verb, self.key, self.act, self.around.step, self.span)
        return self._doing

    @property
    def move(self) -> Move:
        """The Move; only of an act."""
        assert isinstance(self.doing, Move)
        return self.doing

    def walked(self) -> Walked:
        """As others read it."""
        if self._walked is None:
            around = self.around
            before = Snapshot(self.values, self.where)
            self._walked = Walked(
                self.doing, around.step, around.stage, self.where, before, around.method
            )
        return self._walked


class AllDone(Sequence[Walked]):
    """What was done in a step, in order."""

    __slots__ = ("_done", "_walked")

    def __init__(self, done: list[Done]) -> None:
        self._done = done
        self._walked: tuple[Walked, ...] | None = None

    def _all(self) -> tuple[Walked, ...]:
        if self._walked is None:
            self._walked = tuple([one.walked() for one in self._done])
        return self._walked

    @overload
    def __getitem__(self, at: int) -> Walked: ...
    @overload
    def __getitem__(self, at: slice) -> Sequence[Walked]: ...
    def __getitem__(self, at: int | slice) -> Walked | Sequence[Walked]:
        return self._all()[at]

    def __len__(self) -> int:
        return len(self._done)

    def __iter__(self) -> Iterator[Walked]:
        return iter(self._all())
