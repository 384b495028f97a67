"""The six states that everything in a device is in, and each kind's words for them."""

from enum import Enum, IntFlag


class Kind(Enum):
    """What a thing is; the states have other words for each."""

    # Members are single objects; an enum's own hash is slow, and tables ask for it often.
    __hash__ = object.__hash__

    PART = "part"
    FASTENER = "fastener"
    CONNECTOR = "connector"
    JOINT = "joint"
    STORE = "store"
    POWER = "power"


class State(IntFlag):
    """A set of the six states, as bits; a single state is a set of one."""

    IN = 1
    HALF = 2
    OUT = 4
    WORN = 8
    LEFT = 16
    ABSENT = 32


HOLDING = State.IN | State.HALF
GONE = State.LEFT | State.ABSENT
ANY = State.IN | State.HALF | State.OUT | State.WORN | State.LEFT | State.ABSENT

WORDS: dict[Kind, dict[str, State]] = {
    Kind.PART: {
        "fitted": State.IN,
        "lifted": State.HALF,
        "off": State.OUT,
        "worn": State.WORN,
        "left": State.LEFT,
        "absent": State.ABSENT,
        "unknown": State.IN | State.HALF | State.OUT,
    },
    Kind.FASTENER: {
        "tight": State.IN,
        "loose": State.HALF,
        "out": State.OUT,
        "worn": State.WORN,
        "left": State.LEFT,
        "absent": State.ABSENT,
        "unknown": State.IN | State.HALF | State.OUT,
    },
    Kind.CONNECTOR: {
        "mated": State.IN,
        "open": State.OUT,
        "left": State.LEFT,
        "absent": State.ABSENT,
        "unknown": State.IN | State.OUT,
    },
    Kind.JOINT: {
        "closed": State.IN,
        "open": State.OUT,
        "worn": State.WORN,
        "left": State.LEFT,
        "absent": State.ABSENT,
        "unknown": State.IN | State.OUT,
    },
    Kind.STORE: {
        "full": State.IN,
        "empty": State.OUT,
        "left": State.LEFT,
        "absent": State.ABSENT,
        "unknown": State.IN | State.OUT,
    },
    Kind.POWER: {
        "on": State.IN,
        "off": State.OUT,
        "absent": State.ABSENT,
        "unknown": State.IN | State.OUT,
    },
}


def word_for(kind: Kind, state: State) -> str:
    """The kind's word for one state: a part that is IN is `fitted`; several are joined by `or`."""
    names = [word for word, value in WORDS[kind].items() if value in state and word != "unknown"]
    return " or ".join(names)
