"""`connector`: disconnect, reconnect."""

from dataclasses import dataclass

from guidebuild.guide.blocks.act import Act


@dataclass(frozen=True, slots=True, kw_only=True)
class ConnectorAct(Act):
    """A plug pulled or pushed home."""
