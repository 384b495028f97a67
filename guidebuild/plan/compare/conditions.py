"""A condition as an author writes it."""

from guidebuild.device.condition import Both, Condition, Either, Is, Not


def written(condition: Condition | None, inside: bool = False) -> str:
    """`revision = b and supplied in (bare, complete)`; empty for none."""
    match condition:
        case None:
            return ""
        case Is(option, values):
            some = sorted(values)
            return f"{option} = {some[0]}" if len(some) == 1 else f"{option} in ({', '.join(some)})"
        case Not(Is(option, values)) if len(values) == 1:
            return f"{option} != {next(iter(values))}"
        case Not(of):
            return f"not ({written(of)})"
        case Both(of):
            text = " and ".join(written(one, True) for one in of)
        case Either(of):
            text = " or ".join(written(one, True) for one in of)
    return f"({text})" if inside else text
