"""What many ask about the same guide or proof one after the other, worked out once."""

from collections.abc import Callable
from functools import wraps
from typing import Any, ParamSpec, TypeVar, cast

About = ParamSpec("About")
Answer = TypeVar("Answer")

_FEW = 4  # guides are worked on one by one; more would only keep old ones alive


def remembered(ask: Callable[About, Answer]) -> Callable[About, Answer]:
    """The last few answers, which nobody may change. Values are told apart by identity, which is quick.

    They are given by place, never by name.
    """
    known: dict[object, tuple[object, Answer]] = {}

    @wraps(ask)
    def answer(*about: Any) -> Answer:
        key: object = id(about[0]) if len(about) == 1 else tuple(map(id, about))
        found = known.get(key)
        if found is None:
            if len(known) >= _FEW:
                del known[next(iter(known))]
            # The values are kept, so that their ids stay theirs.
            found = known[key] = (about, ask(*about))  # type: ignore[call-arg]
        return found[1]

    return cast(Callable[About, Answer], answer)
