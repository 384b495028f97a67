"""Which sticks hold an old form of a guide, and which of its steps and cautions changed since."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from guidebuild.handover.marks import Mark
from guidebuild.handover.stick_list import Held


@dataclass(frozen=True, slots=True)
class Old:
    """A guide on a stick that is not as it is now. `gone`: the guide itself is no longer there."""

    held: Held
    cautions: tuple[str, ...]  # steps whose safety messages changed
    changed: tuple[str, ...]  # steps of which something else changed
    added: tuple[str, ...]
    removed: tuple[str, ...]
    gone: bool = False

    @property
    def grave(self) -> bool:
        """Whether a reader of that stick may be hurt by what it does not say."""
        return bool(self.cautions or self.gone)


def recalled(held: Iterable[Held], now: Mapping[str, tuple[Mark, ...]]) -> Iterator[Old]:
    """Each line of the stick list that is out of date; `now`: content path -> marks."""
    for one in held:
        marks = now.get(one.guide)
        if marks is None:
            yield Old(one, (), (), (), (), gone=True)
            continue
        before = {mark.step: mark for mark in one.steps}
        after = {mark.step: mark for mark in marks}
        both = [step for step in after if step in before]
        old = Old(
            one,
            tuple(step for step in both if before[step].caution != after[step].caution),
            tuple(step for step in both if before[step].rest != after[step].rest),
            tuple(step for step in after if step not in before),
            tuple(step for step in before if step not in after),
        )
        if old.cautions or old.changed or old.added or old.removed:
            yield old
