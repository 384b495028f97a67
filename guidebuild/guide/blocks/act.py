"""What every act has in common, whatever it is done to."""

from dataclasses import dataclass, field

from guidebuild.device.acts import Verb
from guidebuild.device.condition import Condition
from guidebuild.device.states import Kind
from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True, kw_only=True)
class Act:
    """One act on one or more targets, in the author's order.

    `targets` are ids as written (a thing, a group, `group.hole`; `device` for power). `span` covers the
    whole act, from its verb to its last key; `block` the whole fenced block it stands in.
    """

    kind: Kind
    verb: Verb
    verb_span: Span = field(compare=False)
    targets: tuple[Said, ...]
    when: Condition | None = None
    with_: tuple[Said, ...] = ()  # tools, any of them
    if_stuck: Said | None = None
    note: Said | None = None
    span: Span = field(compare=False)
    block: Span = field(compare=False)
