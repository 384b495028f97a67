"""The table of acts, as the design writes it: from which states, to which."""

from dataclasses import dataclass

from guidebuild.device.acts import Verb
from guidebuild.device.states import Kind
from tests.proof.oracle.sets import ABSENT, HALF, IN, LEFT, OUT, WORN, Maybe

ANY = IN | HALF | OUT | WORN | LEFT | ABSENT
NEW = OUT | WORN | LEFT | ABSENT


@dataclass(frozen=True)
class Row:
    """One line of the table. `wears`: a single-use thing ends worn by this act, not out."""

    begins: Maybe
    ends: Maybe
    wears: bool = False


TABLE: dict[tuple[Kind, Verb], Row] = {
    (Kind.FASTENER, Verb.REMOVE): Row(IN | HALF, OUT, wears=True),
    (Kind.CONNECTOR, Verb.DISCONNECT): Row(IN, OUT),
    (Kind.JOINT, Verb.RELEASE): Row(IN, OUT, wears=True),
    (Kind.STORE, Verb.RELEASE): Row(IN, OUT),
    (Kind.FASTENER, Verb.LOOSEN): Row(IN | HALF, HALF),
    (Kind.FASTENER, Verb.START): Row(OUT, HALF),
    (Kind.FASTENER, Verb.TIGHTEN): Row(IN | HALF, IN),
    (Kind.FASTENER, Verb.REFIT): Row(OUT, IN),
    (Kind.CONNECTOR, Verb.RECONNECT): Row(OUT, IN),
    (Kind.JOINT, Verb.CLOSE): Row(OUT, IN),
    (Kind.STORE, Verb.RESTORE): Row(OUT, IN),
    (Kind.PART, Verb.LIFT): Row(IN, HALF),
    (Kind.PART, Verb.OFFER): Row(OUT | HALF, HALF),
    (Kind.PART, Verb.REMOVE): Row(IN | HALF, OUT, wears=True),
    (Kind.PART, Verb.REFIT): Row(OUT | HALF, IN),
    (Kind.PART, Verb.LOWER): Row(HALF, IN),
    (Kind.PART, Verb.EXCHANGE): Row(NEW, OUT),
    (Kind.PART, Verb.RENEW): Row(NEW, OUT),
    (Kind.FASTENER, Verb.RENEW): Row(NEW, OUT),
    (Kind.JOINT, Verb.RENEW): Row(OUT | WORN | LEFT, OUT),
    (Kind.PART, Verb.ADD): Row(ABSENT, OUT),
    (Kind.POWER, Verb.SWITCH_ON): Row(ANY, IN),
    (Kind.POWER, Verb.SWITCH_OFF): Row(ANY, OUT),
}

OPENS_ON_THE_OLD_UNIT = {Verb.REMOVE, Verb.DISCONNECT, Verb.RELEASE, Verb.LOOSEN}
ON_THE_BENCH = {Verb.RENEW, Verb.EXCHANGE, Verb.ADD}

UNDO = {
    Kind.FASTENER: Verb.REMOVE,
    Kind.CONNECTOR: Verb.DISCONNECT,
    Kind.JOINT: Verb.RELEASE,
    Kind.STORE: Verb.RELEASE,
    Kind.PART: Verb.REMOVE,
}
DO_UP = {
    Kind.FASTENER: Verb.REFIT,
    Kind.CONNECTOR: Verb.RECONNECT,
    Kind.JOINT: Verb.CLOSE,
    Kind.STORE: Verb.RESTORE,
    Kind.PART: Verb.REFIT,
}
