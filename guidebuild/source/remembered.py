"""What many ask about the same guide or proof one after the other, worked out once."""

from collections.abc import Callable
from functools import wraps
from typing import ParamSpec, TypeVar

About = ParamSpec("About")
Answer = TypeVar("Answer")

_FEW = 4  # guides are worked on one by one; more would only keep old ones alive


def remembered(ask: Callable[About, Answer]) -> Callable[About, Answer]:
    """The last few answers, which nobody may change. Values are told apart by identity, which is quick."""
    known: dict[tuple[int, ...], tuple[object, Answer]] = {}

    @wraps(ask)
    def answer(*about: About.args, **named: About.kwargs) -> Answer:
        assert not named, "what is named is not looked at"
        key = tuple(map(id, about))
        found = known.get(key)
        if found is None:
            if len(known) >= _FEW:
                del known[next(iter(known))]
            found = (
                about,
                ask(*about, **named),
            )  # the values are kept, so that their ids stay theirs
            known[key] = found
        return found[1]

    return answer
