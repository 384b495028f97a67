"""Fasteners and tools in the classes of Regulation (EU) 2023/1669 and 2023/1670, as far as a record tells.

Basic tools are the sixteen of Regulation (EU) 2023/1670 definition (50), restated. A fastener that has to be new
counts as resupplied where a kit brings it, else as removable; all others as reusable. Both by the record's word.
"""

from collections.abc import Collection, Iterable

from guidebuild.plan.depth.measure import Depth

BASIC = (
    "screwdriver", "hexagon socket key", "hexagon key", "combination wrench", "pliers", "diagonal cutters",
    "prying lever", "tweezers", "magnifying glass", "spudger", "pick",
)  # fmt: skip


def fastener_class(depth: Depth, brought: Collection[str]) -> str:
    """The worst class of what is opened on the way; `brought`: what the kits of the part bring."""
    if not depth.materials:
        return "reusable"
    return "resupplied" if set(depth.materials) <= set(brought) else "removable"


def tool_class(names: Iterable[str], supplied: Collection[str]) -> str:
    """The worst class of the tools by their names; `supplied`: the names of those that come with the spare part."""
    worst = "no tools"
    for name in names:
        if name in supplied:
            kind = "supplied with the spare part"
        elif any(word in name.lower() for word in BASIC):
            kind = "basic tools"
        else:
            kind = "commercially available tools"
        worst = max(worst, kind, key=_ORDER.index)
    return worst


_ORDER = (
    "no tools",
    "basic tools",
    "supplied with the spare part",
    "supplied with the product",
    "commercially available tools",
)
