"""Ratios told with the limits that they are held against."""

from collections.abc import Mapping


def told(ratios: Mapping[str, float], limits: Mapping[str, float]) -> None:
    """A line for each: the figure, the limit, and whether it is kept."""
    width = max(map(len, ratios))
    for name, ratio in ratios.items():
        limit = limits[name]
        print(
            f"{name:{width}}  {ratio:8.3f}  limit {limit:<6g}  {'kept' if ratio <= limit else 'MISSED'}"
        )
