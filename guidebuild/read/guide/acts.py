"""Blocks that say acts: fastener, connector, part, joint, power, store."""

from functools import cache
from typing import Any

from guidebuild.device.acts import Verb
from guidebuild.device.states import Kind
from guidebuild.guide.blocks.act import Act
from guidebuild.guide.blocks.connector import ConnectorAct
from guidebuild.guide.blocks.fastener import FastenerAct
from guidebuild.guide.blocks.joint import JointAct
from guidebuild.guide.blocks.part import PartAct
from guidebuild.guide.blocks.power import PowerAct
from guidebuild.guide.blocks.store import StoreAct
from guidebuild.read.shape.entry import Entry
from guidebuild.source.said import Said
from guidebuild.source.span import Span

ACTS: dict[str, tuple[Kind, type[Act]]] = {
    "fastener": (Kind.FASTENER, FastenerAct),
    "connector": (Kind.CONNECTOR, ConnectorAct),
    "part": (Kind.PART, PartAct),
    "joint": (Kind.JOINT, JointAct),
    "power": (Kind.POWER, PowerAct),
    "store": (Kind.STORE, StoreAct),
}
_VERBS = {verb.value: verb for verb in Verb}
_NOT_FIELDS = frozenset({"allow"})


def act(name: str, entry: Entry, block: Span) -> Act | None:
    """The act that an entry says; None where its verb or its targets were lost.

    A key of the schema is the field of the same name in the block's class (`do-up` is `do_up`).
    """
    kind, make = ACTS[name]
    word = next(filter(_VERBS.__contains__, entry.values), None)
    if word is None:
        return None
    said = entry.values[word]
    targets: tuple[Said, ...] = said if isinstance(said, tuple) else (said,)
    fields: dict[str, Any] = {
        _field(key): value
        for key, value in entry.values.items()
        if key != word and key not in _NOT_FIELDS
    }
    return make(
        kind=kind,
        verb=_VERBS[word],
        verb_span=entry.key(word).span,
        targets=targets,
        span=entry.span,
        block=block,
        **fields,
    )


@cache  # the keys of our schemas
def _field(key: str) -> str:
    return "with_" if key == "with" else key.replace("-", "_")
