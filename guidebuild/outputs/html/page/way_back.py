"""Which steps must be undone to get at a thing again: from what it lies behind, and what closed since."""

from collections.abc import Iterable
from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.outputs.html.page.reading import Reading
from guidebuild.proof.mistake import Move

_CLOSING = frozenset({Verb.REFIT, Verb.LOWER, Verb.TIGHTEN, Verb.RECONNECT, Verb.CLOSE})


@dataclass(frozen=True, slots=True)
class Closings:
    """All closing moves of the main way, counted through: `step_of` a move, and the moves that close a key."""

    step_of: tuple[str, ...]
    of: dict[str, tuple[int, ...]]

    def last_step(self, key: str) -> str | None:
        """The id of the step that put a thing back last; None where none did."""
        moves = self.of.get(key)
        return self.step_of[moves[-1]] if moves else None


def closings(reading: Reading) -> Closings:
    """Where on the main way each thing is put back, tightened or closed."""
    steps: list[str] = []
    found: dict[str, list[int]] = {}
    for passage in reading.proof.passages:
        for one in passage.walked if passage.stage.remedy is None else ():
            if isinstance(one.doing, Move) and one.doing.verb in _CLOSING:
                found.setdefault(one.doing.thing, []).append(len(steps))
                steps.append(passage.step.id)
    return Closings(tuple(steps), {key: tuple(moves) for key, moves in found.items()})


def way_back(reading: Reading, closed: Closings, keys: Iterable[str]) -> tuple[str, ...]:
    """Ids of the steps after which these things lie open again when undone, the last step first.

    What a thing lies behind must be off, and so must all that ties this, in turn. What was closed before
    the thing itself was put in needs no undoing.
    """
    undo = {move for key in keys if key in closed.of for move in _since(reading, closed, key)}
    steps = (closed.step_of[move] for move in sorted(undo, reverse=True))
    return tuple(dict.fromkeys(steps))


def _since(reading: Reading, closed: Closings, key: str) -> set[int]:
    """The moves that closed anything over a thing after it was put in itself."""
    layout, own = reading.proof.layout, closed.of[key][-1]
    found: set[int] = set()
    seen: set[str] = set()
    waiting = list(layout.covers.behind(key))
    while waiting:
        cover = waiting.pop()
        if cover in seen:
            continue
        seen.add(cover)
        for thing in (cover, *(link.key for link in layout.touching(cover))):
            found |= {move for move in closed.of.get(thing, ()) if move > own}
            waiting += layout.covers.behind(thing)
    return found
