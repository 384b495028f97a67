"""The trade's tables that come with the package: CSV files with a column that says where each row is from."""

import csv
from collections.abc import Mapping
from functools import cache
from importlib.resources import files


@cache
def rows(name: str) -> tuple[Mapping[str, str], ...]:
    """The rows of `data/<name>.csv`, read once and only when first asked for."""
    text = files("guidebuild.device").joinpath("data", f"{name}.csv").read_text(encoding="utf-8")
    return tuple(csv.DictReader(text.splitlines()))
