"""A set of configurations as few simple conditions: boxes, each an answer or several for some options."""

from guidebuild.guide.boxes import cover as covered
from guidebuild.guide.configurations import Configurations
from guidebuild.guide.numbering import Digits
from guidebuild.guide.smearing import deciding, fold

Box = dict[int, frozenset[int]]  # axis -> its classes; an axis that is not named may be anything


def cover(configurations: Configurations, where: int, among: int) -> tuple[Box, ...]:
    """Boxes that hold in `where` and nowhere else in `among`; what lies outside of `among` is free.

    An empty box holds everywhere; no box at all holds nowhere.
    """
    on, off = where & among, among ^ (where & among)
    if not on or not off:
        return ({},) if on else ()
    full = configurations.digits
    axes, wide_on, wide_off = deciding(full, configurations.spread(on), configurations.spread(off))
    small = Digits.of(tuple(full.radix[axis] for axis in axes))
    boxes = covered(small, fold(full, axes, wide_on), fold(full, axes, wide_off))
    return tuple({axes[at]: frozenset(box.classes[at]) for at in box.asked(small)} for box in boxes)
