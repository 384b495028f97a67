"""What is sold or handed out together."""

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal

from guidebuild.source.said import Said
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Amount:
    """So many of an item: `cover-seal: 1`."""

    item: Said
    count: Decimal


@dataclass(frozen=True, slots=True)
class Form:
    """One form in which a kit is sold. A kit sold in one form has one Form whose id is empty."""

    id: str
    name: Said | None
    part_number: Said | None
    arrives_with: tuple[Said, ...]  # parts and links of the record that the new unit brings
    materials: tuple[Amount, ...]  # what it adds to the kit's own
    tools: tuple[Said, ...]
    take_off: Mapping[str, Said]  # packing on the new unit: id -> name
    span: Span


@dataclass(frozen=True, slots=True)
class Kit:
    """`brings` is the part (or parts) that it replaces or adds; `forms` has at least one entry."""

    id: str
    name: Said
    span: Span
    brings: tuple[Said, ...]
    forms: tuple[Form, ...]
    materials: tuple[Amount, ...]
    tools: tuple[Said, ...]
    take_off: Mapping[str, Said]
    inspect: tuple[Said, ...]
    replaced_by: Said | None = None
    until: Said | None = None
    from_batch: Said | None = None
