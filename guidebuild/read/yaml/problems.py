"""What a YAML parser complains of, in the words of somebody who writes procedures."""

from yaml.error import MarkedYAMLError

_TAB = ("a tab stands where spaces must", "indent with spaces")
_SIGN = ("a character stands here that can't be seen", "take it out")
_LINE = ("this line does not fit to the lines above", "indent it as far as its neighbours")
_DEEP = ("too many brackets or dashes inside each other", "write it flatter")

# The first of these that libyaml's message contains: what is wrong, what to do.
_WORDS = {
    "found character that cannot start any token": (
        "a tab or a sign stands where none may",
        "indent with spaces, or put the text in quotes",
    ),
    "did not find expected ',' or ']'": ("a list is opened with `[` and not closed", "add `]`"),
    "did not find expected ',' or '}'": ("a map is opened with `{` and not closed", "add `}`"),
    "found unexpected end of stream": ("a quote is opened and not closed", "close the quote"),
    "did not find expected key": _LINE,
    "did not find expected '-' indicator": _LINE,
    "did not find expected <document start>": _LINE,
    "mapping values are not allowed": (
        "a second `: ` stands here, or the line is indented too far",
        "put the text in quotes, or indent the line as far as its neighbours",
    ),
    "block sequence entries are not allowed": (
        "a list can't begin here",
        "begin the list on its own line",
    ),
    "could not find expected ':'": (
        "this is no `key: value`",
        "put a colon and a space after the key",
    ),
    "found undefined alias": (
        "`*` names something that no `&` marks",
        "put the text in quotes",
    ),
    "expected a single document": (
        "a line of hyphens begins a second text",
        "take the line `---` out",
    ),
    "found a tab character": _TAB,
    "control characters are not allowed": _SIGN,
    "special characters are not allowed": _SIGN,
    "unacceptable character": _SIGN,
    "exceeded maximum nesting depth": _DEEP,
}


def in_plain_words(error: Exception) -> tuple[str, str]:
    """(what is wrong, what to do)."""
    if isinstance(error, RecursionError):
        return _DEEP
    said = str(error)
    if isinstance(error, MarkedYAMLError):
        said = f"{error.problem or ''} {error.context or ''}"
    for part, words in _WORDS.items():
        if part in said:
            return words
    return " ".join(said.split()), "put the text in quotes, or look at the indentation"
