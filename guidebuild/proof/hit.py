"""What a rule says of itself and what it yields; the runner makes findings of it."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from guidebuild.source.edit import Edit
from guidebuild.source.finding import Category, Loudness, Related
from guidebuild.source.span import Span


@dataclass(frozen=True, slots=True)
class Rule:
    """A rule's category. Its name is its file's name; its words are MESSAGE, HELP and the docstring.

    `loudness`: how loud it is where the settings say nothing, if not as its category is.
    """

    category: Category
    loudness: Loudness | None = None


@dataclass(frozen=True, slots=True)
class Hit:
    """One place where a rule speaks: `words` fill the templates MESSAGE and HELP.

    `where`: the configurations (bits) in which it holds, None where configurations have no say. `among`:
    those in which the place is shown at all (None: all), so that it can be told shortly.
    """

    span: Span
    words: Mapping[str, object] = field(default_factory=dict)
    related: tuple[Related, ...] = ()
    where: int | None = None
    among: int | None = None
    edits: tuple[Edit, ...] = ()
