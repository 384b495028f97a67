"""The act table: which act takes which kind from which states to which."""

from dataclasses import dataclass
from enum import Enum

from guidebuild.device.states import ANY, Kind, State


class Verb(Enum):
    """What hands do. The word is the one that authors write."""

    # Members are single objects; an enum's own hash is slow, and tables ask for it often.
    __hash__ = object.__hash__

    REMOVE = "remove"
    LOOSEN = "loosen"
    START = "start"
    TIGHTEN = "tighten"
    REFIT = "refit"
    RENEW = "renew"
    DISCONNECT = "disconnect"
    RECONNECT = "reconnect"
    LIFT = "lift"
    LOWER = "lower"
    OFFER = "offer"
    EXCHANGE = "exchange"
    ADD = "add"
    RELEASE = "release"
    CLOSE = "close"
    RESTORE = "restore"
    SWITCH_OFF = "switch-off"
    SWITCH_ON = "switch-on"


@dataclass(frozen=True, slots=True)
class Change:
    """From one of `start` to `end`. A single-use thing that would end OUT by an opening act ends WORN."""

    start: State
    end: State


_IN, _HALF, _OUT = State.IN, State.HALF, State.OUT
_NEW_FROM = State.OUT | State.WORN | State.LEFT | State.ABSENT

TABLE: dict[tuple[Kind, Verb], Change] = {
    (Kind.FASTENER, Verb.REMOVE): Change(_IN | _HALF, _OUT),
    (Kind.FASTENER, Verb.LOOSEN): Change(_IN | _HALF, _HALF),
    (Kind.FASTENER, Verb.START): Change(_OUT, _HALF),
    (Kind.FASTENER, Verb.TIGHTEN): Change(_IN | _HALF, _IN),
    (Kind.FASTENER, Verb.REFIT): Change(_OUT, _IN),
    (Kind.FASTENER, Verb.RENEW): Change(_NEW_FROM, _OUT),
    (Kind.CONNECTOR, Verb.DISCONNECT): Change(_IN, _OUT),
    (Kind.CONNECTOR, Verb.RECONNECT): Change(_OUT, _IN),
    (Kind.JOINT, Verb.RELEASE): Change(_IN, _OUT),
    (Kind.JOINT, Verb.CLOSE): Change(_OUT, _IN),
    (Kind.JOINT, Verb.RENEW): Change(_OUT | State.WORN | State.LEFT, _OUT),
    (Kind.STORE, Verb.RELEASE): Change(_IN, _OUT),
    (Kind.STORE, Verb.RESTORE): Change(_OUT, _IN),
    (Kind.PART, Verb.LIFT): Change(_IN, _HALF),
    (Kind.PART, Verb.OFFER): Change(_OUT | _HALF, _HALF),
    (Kind.PART, Verb.REMOVE): Change(_IN | _HALF, _OUT),
    (Kind.PART, Verb.REFIT): Change(_OUT | _HALF, _IN),
    (Kind.PART, Verb.LOWER): Change(_HALF, _IN),
    (Kind.PART, Verb.EXCHANGE): Change(_NEW_FROM, _OUT),
    (Kind.PART, Verb.RENEW): Change(_NEW_FROM, _OUT),
    (Kind.PART, Verb.ADD): Change(State.ABSENT, _OUT),
    (Kind.POWER, Verb.SWITCH_ON): Change(ANY, _IN),
    (Kind.POWER, Verb.SWITCH_OFF): Change(ANY, _OUT),
}

OPENING = frozenset(
    {Verb.REMOVE, Verb.DISCONNECT, Verb.RELEASE}
)  # a single-use thing is worn by these
REPLACING = frozenset(
    {Verb.RENEW, Verb.EXCHANGE, Verb.ADD}
)  # done on the bench: reach and safe are not asked
CLOSING = frozenset(
    {Verb.REFIT, Verb.RECONNECT, Verb.CLOSE, Verb.TIGHTEN, Verb.LOWER, Verb.START, Verb.OFFER}
)


def verbs_of(kind: Kind) -> tuple[Verb, ...]:
    """The acts that a kind knows, in the order of the table."""
    return tuple(verb for one, verb in TABLE if one is kind)
