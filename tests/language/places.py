"""Values with their places, which do not count when two of them are compared."""

from dataclasses import fields, is_dataclass

from guidebuild.source.span import Span


def with_places(value: object) -> object:
    """The same for two values only if all their spans begin and end alike."""
    if isinstance(value, Span):
        return value.source.path, value.start, value.end
    if is_dataclass(value):
        inside = (with_places(getattr(value, one.name)) for one in fields(value))
        return type(value).__name__, *inside
    if isinstance(value, dict):
        return {key: with_places(one) for key, one in value.items()}
    return tuple(map(with_places, value)) if isinstance(value, tuple) else value
