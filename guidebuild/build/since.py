"""What an earlier JSON report told already, so that a team with old findings sees the new ones only."""

import json
from collections import Counter
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

from guidebuild.build.trouble import Trouble
from guidebuild.reports.parts.identity import Identity, identities
from guidebuild.reports.parts.slip import Slip


def since(file: str | Path) -> Counter[Identity]:
    """How often each finding stands in an earlier report; Trouble where it is none."""
    try:
        report = json.loads(Path(file).read_text(encoding="utf-8"))
        return Counter(found for each in report["findings"] for found in _identities(each))
    except OSError as error:
        raise Trouble(f"Can't read {file}: {error.strerror}.") from error
    except (ValueError, KeyError, TypeError, RecursionError) as error:
        raise Trouble(
            f"{file} is no report of `guidebuild check --report json=FILE`; write one first."
        ) from error


def _identities(found: dict[str, Any]) -> Iterator[Identity]:
    for guide in found["guides"] or (found["path"],):
        yield found["rule"], guide, found["step"], found["text"]


def new(slips: Iterable[Slip], earlier: Counter[Identity]) -> tuple[Slip, ...]:
    """The slips that the earlier report does not have, or not as often: of equals the last ones are new."""
    left = Counter(earlier)
    found = []
    for slip in slips:
        mine = tuple(identities(slip))
        if any(left[each] < 1 for each in mine):
            found.append(slip)
        left.subtract(mine)
    return tuple(found)
