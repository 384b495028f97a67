"""Where readers put what they find: each mistake once, and which files lost something by it."""

from guidebuild.read.fault import Fault, finding
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Finding, Related
from guidebuild.source.span import Span


class Report:
    """The findings of one run of the reader.

    `broken` holds the paths of files of which something could not be read at all, so that what stands in
    them is not the whole of what the author wrote.
    """

    __slots__ = ("_found", "_places", "broken")

    def __init__(self) -> None:
        self._found: dict[tuple[str, int, int, str, str], Finding] = {}
        self._places: set[tuple[str, int, int]] = set()
        self.broken: set[str] = set()

    def tell(
        self,
        fault: Fault,
        span: Span,
        *,
        lost: bool = True,
        edits: tuple[Edit, ...] = (),
        related: tuple[Related, ...] = (),
        **words: object,
    ) -> None:
        """Say that something is wrong; `lost` is False where reading goes on as the author surely meant."""
        found = finding(fault, span, edits, related, **words)
        self._found.setdefault(found.sort_key, found)
        self._places.add(span.sort_key)
        if lost:
            self.broken.add(span.source.path)

    def knows(self, span: Span) -> bool:
        """Whether something was said of just this place: then nothing more needs to be worked out for it."""
        return span.sort_key in self._places

    @property
    def findings(self) -> list[Finding]:
        """Everything found so far, in the order in which it is told."""
        return sorted(self._found.values(), key=lambda found: found.sort_key)
