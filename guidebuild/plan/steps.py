"""How many steps a disassembly has.

A step is "an operation that finishes with the removal of a part, and/or with a change of tool". Decision (EU)
2016/1371, Appendix a) ii), read in its German text; the French decree 2020-1757 says the same and that fasteners
are no parts. Picking a tool up or putting it down ends no step.
"""

from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Operation:
    """What is done with `tool` (None: by hand); `removes`: a part or sub-assembly comes off."""

    tool: str | None
    removes: bool = False


def steps(operations: Iterable[Operation]) -> int:
    """The steps up to the last removal. An act by hand neither changes nor clears the tool."""
    count, tool, is_open = 0, None, False
    for one in operations:
        if one.tool and tool and one.tool != tool and is_open:
            count, is_open = count + 1, False  # a change of tool ends the step that is open
        tool = one.tool or tool
        is_open = True
        if one.removes:
            count, is_open = count + 1, False  # a removal, then a change of tool: one end
    return count
