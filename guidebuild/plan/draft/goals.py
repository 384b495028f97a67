"""What a draft may be for, and the words that go with it."""

from guidebuild.plan.draft.names import title

STAYS = ("inspect", "clean", "adjust")  # the part is only reached
BRINGS = ("replace", "add")  # a new one is fitted


def intro(goal: str, device: str, noun: str, them: str) -> str:
    """The paragraph under the title. `them`: the parts, with `the`."""
    match goal:
        case "replace":
            does = f"takes {them} out of the {noun} and fits {_new(them)}"
        case "remove":
            does = f"takes {them} out of the {noun}"
        case "add":
            does = f"fits {them} to a {noun} that {_lacks(them)}"
        case _:
            does = f"opens the {noun} to {goal} {them}"
    return f"For the {device}. This guide {does}."


def _new(them: str) -> str:
    return "new ones" if _several(them) else "a new one"


def _lacks(them: str) -> str:
    return "does not have them yet" if _several(them) else "has none yet"


def _several(them: str) -> bool:
    return " and " in them or them.startswith("the parts")


def way_in(goal: str, them: str) -> str:
    """The stage that ends with the parts at hand, or off."""
    if goal == "add":
        return title(f"make room for {them}")
    return title(f"{'take out' if goal in ('replace', 'remove') else 'get at'} {them}")
