"""One YAML text while it is read: where its nodes stand in the author's file, and the finding list."""

from typing import Any

from yaml.nodes import MappingNode, Node, ScalarNode

from guidebuild.read.faults import yaml_not_readable
from guidebuild.read.report import Report
from guidebuild.source.said import Said
from guidebuild.source.span import Span
from guidebuild.source.text import Source

TRAPPED = "trapped"  # the style of a scalar that an author forgot to put in quotes


class Reading:
    """`offset`: where the YAML text begins in `source`. `key` and `where`: what is being read, for messages."""

    __slots__ = ("key", "left", "offset", "quiet", "report", "source", "where")

    def __init__(self, source: Source, offset: int, size: int, report: Report, where: str) -> None:
        self.source = source
        self.offset = offset
        self.report = report
        self.where = where
        self.key = where
        self.left = 100 + size  # nodes that may be visited: each has a character, but for aliases
        self.quiet = False

    def span(self, node: Node) -> Span:
        """Where a node stands, from its first to after its last non-blank character."""
        start: int = node.start_mark.index
        if type(node) is ScalarNode:
            end: int = node.end_mark.index
            if node.style == "|" or node.style == ">":
                end = self._trimmed(start, end)
        else:
            end = max(start, self._end(node))
        offset = self.offset
        return Span(self.source, offset + start, offset + end)

    def _end(self, node: Any) -> int:
        """The end of a collection; one in block style ends where its last entry ends."""
        deep = 0
        while type(node) is not ScalarNode and not node.flow_style and node.value and deep < 200:
            last = node.value[-1]
            if type(node) is MappingNode:
                key, node = last
                if type(node) is ScalarNode and not node.value and not node.style:
                    node = key
            else:
                node = last
            deep += 1
        end: int = node.end_mark.index
        if type(node) is ScalarNode and node.style in ("|", ">"):
            end = self._trimmed(node.start_mark.index, end)
        return end

    def _trimmed(self, start: int, end: int) -> int:
        text = self.source.text[self.offset + start : self.offset + end]
        return start + len(text.rstrip())

    def spend(self, count: int, node: Any) -> bool:
        """Whether this many more nodes may be visited; said once where it is too much."""
        self.left -= count
        if self.left < 0 and not self.quiet:
            self.quiet = True
            problem = "its aliases make more of it than can be read"
            self.report.tell(
                yaml_not_readable, self.span(node), problem=problem, do="write it out, without `*`"
            )
        return self.left >= 0

    def said(self, node: Any) -> Said:
        """A scalar with its place."""
        return Said(node.value, self.span(node))
