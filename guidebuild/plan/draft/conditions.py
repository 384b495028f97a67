"""A set of configurations as the condition that an author would write."""

from guidebuild.guide.configurations import Configurations


def condition(cases: Configurations, where: int, among: int | None = None) -> str:
    """Empty where it always holds. `among`: the configurations in which it is asked at all."""
    told = cases.tell(where, cases.everywhere if among is None else among)
    for row in (told.full,) if told.full else ():
        return " or ".join(
            "(" + " and ".join(f"{name} in ({', '.join(some)})" for name, some in box) + ")"
            for box in row
        )
    match told.words.partition(" when "):
        case ("only", _, words):
            return words
        case ("except", _, words):
            return f"not ({words})"
        case _:
            return ""
