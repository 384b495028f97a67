"""Where readers put what they find: each mistake once, and which files lost something by it."""

from collections.abc import Hashable
from dataclasses import replace
from typing import TypeAlias

from guidebuild.read.fault import Fault, finding
from guidebuild.source.edit import Edit
from guidebuild.source.finding import Finding, Related
from guidebuild.source.span import Span

Place: TypeAlias = tuple[str, int, int, str, str]
MOST_RELATED = 12  # places told beside the first


class Report:
    """The findings of one run of the reader.

    `broken` holds the paths of files of which something could not be read at all, so that what stands in
    them is not the whole of what the author wrote; `holed` those of which a whole block was lost. `calls`:
    how often anything was reported, told or not; while it stays the same, all is well.
    """

    __slots__ = ("_excused", "_first", "_found", "_places", "_silent", "broken", "calls", "holed")

    def __init__(self) -> None:
        self._found: dict[Place, Finding] = {}
        self._first: dict[Hashable, Place] = {}
        self._places: set[tuple[str, int, int]] = set()
        self._excused: list[Span] = []
        self._silent = False
        self.calls = 0
        self.broken: set[str] = set()
        self.holed: set[str] = set()

    def tell(
        self,
        fault: Fault,
        span: Span,
        *,
        lost: bool = True,
        edits: tuple[Edit, ...] = (),
        related: tuple[Related, ...] = (),
        same: Hashable = None,
        **words: object,
    ) -> None:
        """Say that something is wrong; `lost` is False where reading goes on as the author surely meant.

        `same`: what tells one mistake from another; made again in the same file, it is told at its first
        place, with the others beside it.
        """
        self.calls += 1
        if lost:
            self.broken.add(span.source.path)
        if self._silent or self._is_excused(span):
            return
        found = finding(fault, span, edits, related, **words)
        key = (fault.__name__, span.source.path, same)
        if same is not None and key in self._first:
            self._again(self._first[key], found)
        else:
            self._first[key] = found.sort_key
            self._found.setdefault(found.sort_key, found)
        self._places.add(span.sort_key)

    def _again(self, first: Place, found: Finding) -> None:
        """The same mistake at another place."""
        told = self._found[first]
        if found.span.sort_key in self._places:
            return
        related = told.related
        if len(related) < MOST_RELATED:
            related = (*related, Related(found.span, "and here"))
        self._found[first] = replace(told, related=related, edits=(*told.edits, *found.edits))

    def lose(self, path: str) -> None:
        """A whole block or file could not be read: nobody knows which ids it would have given."""
        self.calls += 1
        self.broken.add(path)
        self.holed.add(path)

    def muted(self) -> "Report":
        """A report for what can't be judged: it tells nothing, but knows that something is lost."""
        muted = Report()
        muted.broken, muted.holed, muted._silent = self.broken, self.holed, True
        return muted

    def excuse(self, span: Span) -> None:
        """Say nothing more of what stands here: it was cut at a guess, after a mistake that is told."""
        self.calls += 1
        self._excused.append(span)

    def _is_excused(self, span: Span) -> bool:
        return any(
            one.source is span.source and one.start <= span.start and span.end <= one.end
            for one in self._excused
        )

    def knows(self, span: Span) -> bool:
        """Whether something was said of just this place: then nothing more needs to be worked out for it."""
        return span.sort_key in self._places

    @property
    def findings(self) -> list[Finding]:
        """Everything found so far, in the order in which it is told."""
        return sorted(self._found.values(), key=lambda found: found.sort_key)
