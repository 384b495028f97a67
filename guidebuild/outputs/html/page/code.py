"""A step's address: a short code that survives a telephone, `LP2-03/2/14-K`.

The last sign is the check character of ISO 7064 MOD 37,36 over the letters and figures before it: one wrong
sign, or two neighbours swapped, does not check. It is upper case; O and 0 are told apart by the check.
"""

_SIGNS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def check_character(said: str) -> str:
    """The check character of a string; what is no letter or figure is passed over."""
    carry = 36
    for sign in said.upper():
        if sign in _SIGNS:
            carry = (carry + _SIGNS.index(sign)) % 36 or 36
            carry = carry * 2 % 37
    return _SIGNS[(37 - carry) % 36]


def step_code(number: str, issue: str, step: str) -> str:
    """Document, issue, step and check character."""
    said = "/".join(part for part in (number, issue, step) if part)
    return f"{said}-{check_character(said)}"


def checks(code: str) -> bool:
    """Whether a code that someone read out is right."""
    said, _, sign = code.strip().rpartition("-")
    return bool(said) and check_character(said) == sign.upper()
