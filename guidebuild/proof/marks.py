"""Which unit of a goal's part is at hand: a mark beside the part's state.

A mark is kept in the scene like a state, under a key that no id can be (it has a space in it).
"""

OLD = 1  # the unit that the device came with
HAND = 2  # a new one, not fitted yet
FITTED = 4  # a new one, fitted since

_PREFIX = "unit "


def mark(key: str) -> str:
    """Where the mark of a part is kept."""
    return _PREFIX + key


def marked(key: str) -> str:
    """The thing that a key of a scene is about, be it a mark or the thing itself."""
    return key.removeprefix(_PREFIX)
