"""What may be true of a thing: a plain set of states."""

from typing import TypeAlias

from guidebuild.device.states import Kind, State

Maybe: TypeAlias = frozenset[State]

IN = frozenset({State.IN})
HALF = frozenset({State.HALF})
OUT = frozenset({State.OUT})
WORN = frozenset({State.WORN})
LEFT = frozenset({State.LEFT})
ABSENT = frozenset({State.ABSENT})

HERE_AND_ON = IN | HALF
GONE = LEFT | ABSENT
NOT_IN = HALF | OUT | WORN

UNKNOWN: dict[Kind, Maybe] = {
    Kind.PART: IN | HALF | OUT,
    Kind.FASTENER: IN | HALF | OUT,
    Kind.CONNECTOR: IN | OUT,
    Kind.JOINT: IN | OUT,
    Kind.STORE: IN | OUT,
    Kind.POWER: IN | OUT,
}


def unpacked(flag: State) -> Maybe:
    """The states of a flag, one by one."""
    return frozenset(one for one in State if one in flag)


def turned(now: Maybe, states: Maybe, to: Maybe, surely: bool, perhaps: bool) -> Maybe:
    """Each of `states` becomes `to`; where only perhaps, what was true before may be true still."""
    if not now & states:
        return now
    if surely:
        return now - states | to
    return now | to if perhaps else now
