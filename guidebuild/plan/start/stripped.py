"""A strip-down sheet as a whole: what stands on it by its ids, and what its words for a hold are called."""

from collections.abc import Sequence

from guidebuild.device.naming import lowered
from guidebuild.plan.start.ids import Ids
from guidebuild.plan.start.strip import Hold, Removal

_WORDS = {
    "fastener": "screw", "captive": "screw", "connector": "plug", "mains": "plug", "source": "plug",
    "spring": "load", "calibration": "setting", "press": "press-fit",
}  # fmt: skip
LONG = 3  # words of a part's name: one more behind them would be hard to read


class Stripped:
    """`removals`: in order, without the line of the base itself, which is `of_base`."""

    def __init__(self, base: str, lines: Sequence[Removal]) -> None:
        self.ids = Ids()
        self.base = base
        self.base_id = self.ids.of(base)
        self.lines = tuple(lines)
        same = [one for one in lines if one.part.casefold() == base.casefold()]
        self.of_base = same[0] if same else None
        self.removals = tuple(one for one in lines if one is not self.of_base)
        for one in self.removals:
            self.ids.of(one.part)

    def of(self, name: str) -> str:
        """The id of a part by the name on the sheet; empty is the base."""
        return (
            self.base_id
            if not name or name.casefold() == self.base.casefold()
            else self.ids.of(name)
        )

    def holds(self, *kinds: str) -> list[tuple[Removal, Hold]]:
        """All of these kinds, each with the line of its part."""
        return [(one, hold) for one in self.lines for hold in one.holds if hold.kind in kinds]

    def called(self, one: Removal, hold: Hold) -> str:
        """Its own name, else `Battery door screws`; of several of a kind the later ones are numbered."""
        if hold.called:
            return hold.called
        same = [other for other in one.holds if other.kind == hold.kind]
        number = next(n for n, other in enumerate(same) if other is hold)
        again = f" {number + 1}" if number else ""
        if len(one.part.split()) >= LONG:
            return f"{_word(hold).capitalize()}{again} of the {lowered(one.part)}"
        return f"{one.part} {_word(hold)}{again}"

    def id_of(self, one: Removal, hold: Hold) -> str:
        """The id of its entry."""
        number = next(n for n, other in enumerate(one.holds) if other is hold)
        called = self.called(one, hold)
        return self.ids.of(called, f"{one.part} {number}", f"{called} {_word(hold)}")

    def outer(self) -> tuple[str, ...]:
        """The parts over which nothing lies."""
        return tuple(self.ids.of(one.part) for one in self.removals if not one.under)

    def screws_of(self, name: str) -> str | None:
        """The screws that hold a part: a drain is opened there."""
        for one in self.removals:
            if one.part.casefold() == name.casefold():
                held = [hold for hold in one.holds if hold.kind in ("fastener", "captive")]
                return self.id_of(one, held[0]) if held else None
        return None


def _word(hold: Hold) -> str:
    return _WORDS.get(hold.kind, hold.kind) + ("s" if hold.count > 1 else "")
