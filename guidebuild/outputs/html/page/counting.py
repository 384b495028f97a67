"""How many of some things are in a state, in every configuration at once."""

from collections.abc import Iterable

Counts = dict[int, int]  # how many -> the configurations in which it is so many


def count(holds: Iterable[int], among: int) -> Counts:
    """`holds`: for each thing the configurations in which it counts."""
    found: Counts = {0: among}
    always = 0  # most count everywhere or nowhere
    for bits in holds:
        here = bits & among
        if not here:
            continue
        if here == among:
            always += 1
            continue
        after: Counts = {}
        for number, where in found.items():
            yes = where & here
            if yes:
                after[number + 1] = after.get(number + 1, 0) | yes
            if yes != where:
                after[number] = after.get(number, 0) | (where ^ yes)
        found = after
    return {number + always: where for number, where in sorted(found.items())}


def add(weighted: Iterable[tuple[int, int]], among: int) -> Counts:
    """The same for sums: (amount, the configurations in which it counts)."""
    found: Counts = {0: among}
    for amount, bits in weighted:
        after: Counts = {}
        for number, where in found.items():
            yes, no = where & bits, where ^ (where & bits)
            for total, part in ((number + amount, yes), (number, no)):
                if part:
                    after[total] = after.get(total, 0) | part
        found = after
    return dict(sorted(found.items()))
