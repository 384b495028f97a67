"""Strings in quotes, as C writes them."""

_OUT = {"\\": "\\\\", '"': '\\"', "\n": "\\n", "\t": "\\t", "\r": "\\r"}
_OUT |= {"\a": "\\a", "\b": "\\b", "\f": "\\f", "\v": "\\v"}
_IN = {written[1]: meant for meant, written in _OUT.items()}


def quote(text: str) -> str:
    """The text in quotes, on one line; every other character stands for itself."""
    return '"' + "".join(_OUT.get(letter, letter) for letter in text) + '"'


def unquote(written: str) -> tuple[str, int | None]:
    """What a quoted string means, and where in it the writing is wrong (None: nowhere).

    Octal and hexadecimal escapes are read too, since older tools write them.
    """
    if not written.startswith('"'):
        return "", 0
    said: list[str] = []
    at = 1
    while at < len(written):
        letter = written[at]
        if letter == '"':
            return "".join(said), None if at == len(written) - 1 else at + 1
        if letter != "\\":
            said.append(letter)
            at += 1
            continue
        meant, length = _escape(written[at + 1 : at + 5])
        if not length:
            return "".join(said), at
        said.append(meant)
        at += 1 + length
    return "".join(said), len(written)


def _escape(behind: str) -> tuple[str, int]:
    """The character that an escape means and how long it is behind its stroke; length 0: none."""
    if behind[:1] in _IN:
        return _IN[behind[0]], 1
    for figures, radix, skip in (("01234567", 8, 0), ("0123456789abcdefABCDEF", 16, 1)):
        if skip and behind[:1] != "x":
            continue
        length = skip
        while length < len(behind) and behind[length] in figures and length < 3:
            length += 1
        if length > skip:
            return chr(int(behind[skip:length], radix)), length
    return "", 0
