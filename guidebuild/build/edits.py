"""The edits that findings offer, applied to texts: each finding's as a whole or not at all."""

from collections.abc import Iterable
from dataclasses import dataclass, field

from guidebuild.reports.parts.slip import Slip
from guidebuild.source.edit import Edit


@dataclass(slots=True)
class Plan:
    """The slips to be mended together, and for each file its text and the edits to it."""

    slips: list[Slip] = field(default_factory=list)
    texts: dict[str, str] = field(default_factory=dict)
    edits: dict[str, list[Edit]] = field(default_factory=dict)

    def take(self, slip: Slip) -> bool:
        """Add a slip, unless an edit of it would touch one that is taken already."""
        offered = slip.finding.edits
        if not offered or any(self._touches(edit) for edit in offered):
            return False
        self.slips.append(slip)
        for edit in offered:
            source = edit.span.source
            self.texts[source.path] = source.text
            self.edits.setdefault(source.path, []).append(edit)
        return True

    def _touches(self, edit: Edit) -> bool:
        """Whether two edits meet; even side by side, as their order could not be known."""
        span = edit.span
        taken = self.edits.get(span.source.path, ())
        return any(span.start <= other.span.end and other.span.start <= span.end for other in taken)

    def mended(self) -> dict[str, str]:
        """Each file's new text."""
        return {path: applied(text, self.edits[path]) for path, text in self.texts.items()}


def applied(text: str, edits: Iterable[Edit]) -> str:
    """A text with edits that do not overlap; from the last to the first, so that places stay true."""
    for edit in sorted(edits, key=lambda edit: edit.span.start, reverse=True):
        text = text[: edit.span.start] + edit.text + text[edit.span.end :]
    return text


def plan(slips: Iterable[Slip]) -> Plan:
    """As many of the slips that offer edits as go together."""
    found = Plan()
    for slip in slips:
        found.take(slip)
    return found
