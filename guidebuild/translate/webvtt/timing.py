"""Times in captions, in milliseconds, by "collect a WebVTT timestamp" of the W3C's WebVTT."""

import re

_STAMP = re.compile(r"(\d+):(\d+)(?::(\d+))?\.(\d+)", re.ASCII)


def read_stamp(text: str, at: int) -> tuple[int, int] | None:
    """A timestamp at `at`: its milliseconds and where it ends, or None.

    Two figures that are at most 59 are minutes, so hours may be left out; hours may have any number of
    figures; minutes and seconds have two, thousandths three.
    """
    found = _STAMP.match(text, at)
    if found is None:
        return None
    first, second, third, thousandths = found.groups()
    if third is None:
        if len(first) != 2 or int(first) > 59:
            return None  # these are hours, and the seconds are missing
        hours, minutes, seconds = "0", first, second
    else:
        hours, minutes, seconds = first, second, third
    if len(minutes) != 2 or len(seconds) != 2 or len(thousandths) != 3:
        return None
    if int(minutes) > 59 or int(seconds) > 59:
        return None
    whole = (int(hours) * 60 + int(minutes)) * 60 + int(seconds)
    return whole * 1000 + int(thousandths), found.end()


def write_stamp(milliseconds: int) -> str:
    """`00:02:10.500`; hours always stand, since some players want them."""
    seconds, thousandths = divmod(milliseconds, 1000)
    minutes, seconds = divmod(seconds, 60)
    hours, minutes = divmod(minutes, 60)
    return f"{hours:02}:{minutes:02}:{seconds:02}.{thousandths:03}"
