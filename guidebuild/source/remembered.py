"""What many ask about the same guide or proof one after the other, worked out once."""

from collections.abc import Callable
from functools import wraps
from typing import TypeVar

About = TypeVar("About")
Answer = TypeVar("Answer")

_FEW = 4  # guides are worked on one by one; more would only keep old ones alive


def remembered(ask: Callable[[About], Answer]) -> Callable[[About], Answer]:
    """The last few answers, which nobody may change. Values are told apart by identity, which is quick."""
    known: dict[int, tuple[About, Answer]] = {}  # the value is kept, so that its id stays its own

    @wraps(ask)
    def answer(about: About) -> Answer:
        found = known.get(id(about))
        if found is None:
            if len(known) >= _FEW:
                del known[next(iter(known))]
            found = known[id(about)] = about, ask(about)
        return found[1]

    return answer
