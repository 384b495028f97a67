"""What differs between the screws of two holes, in the words of whoever turns them."""

from collections.abc import Iterator

from guidebuild.device.quantity import Quantity
from guidebuild.device.screw import Screw
from guidebuild.device.things import Case, Hole, Torque
from guidebuild.plan.compare.conditions import written

_LOOKS = (
    ("thread", "thread"),
    ("head", "head"),
    ("drive", "drive"),
    ("strength", "strength class"),
)


def screw_changes(one: Hole, other: Hole) -> Iterator[str]:
    """Predicates: `is 2 mm longer (M2.5x12 pan TX8)`."""
    if [_case(case) for case in one.screw] != [_case(case) for case in other.screw]:
        yield from _screw(one, other)
    if _torques(one) != _torques(other):
        yield f"is tightened to {_torques(other)} instead of {_torques(one)}"
    for name, words in (("thread_depth", "usable depth of thread"), ("grip", "thickness held")):
        before, after = _figures(getattr(one, name)), _figures(getattr(other, name))
        if before != after:
            yield f"has another {words}: {after} instead of {before}"
    if (one.view, one.xy) != (other.view, other.xy):
        yield "is drawn at another place"
    if one.captive != other.captive:
        yield "stays in its part now" if other.captive else "does not stay in its part any more"


def _screw(one: Hole, other: Hole) -> Iterator[str]:
    if len(one.screw) != 1 or len(other.screw) != 1:
        yield f"is another screw: {_cases(other)} instead of {_cases(one)}"
        return
    before, after = one.screw[0].value, other.screw[0].value
    yield from _lengths(before, after)
    for name, words in _LOOKS:
        old, new = getattr(before, name), getattr(after, name)
        if old != new:
            yield f"has another {words}: {new or 'not said'} instead of {old or 'not said'}"


def _lengths(before: Screw, after: Screw) -> Iterator[str]:
    if before.length is None or after.length is None:
        if before.length != after.length:
            yield f"is {after.text} instead of {before.text}"
        return
    more = after.length - before.length
    if more:
        word = "longer" if more > 0 else "shorter"
        yield f"is {abs(more).normalize():f} mm {word} ({after.text})"


def _case(case: Case[Screw]) -> tuple[str, str]:
    return case.value.text, written(case.when)


def _cases(hole: Hole) -> str:
    return " or ".join(case.value.text for case in hole.screw) or "not said"


def _torques(hole: Hole) -> str:
    return " or ".join(_torque(case.value) for case in hole.torque) or "nothing said"


def _torque(torque: Torque) -> str:
    if torque.figure is not None:
        return f"{torque.figure.value} {torque.figure.unit}"
    return {"by-hand": "hand-tight"}.get(torque.word or "", "a figure that is not known")


def _figures(cases: tuple[Case[Quantity], ...]) -> str:
    return " or ".join(f"{case.value.value} {case.value.unit}" for case in cases) or "nothing said"
