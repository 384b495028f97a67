"""Where a link may lead: to a page or a mail address outside, or to something beside the page.

An allow-list, since schemes that start a program (`ms-settings:`, `intent:`) are made up by whoever installs one.
Source: RFC 3986 section 3.1 (what a scheme is); the WHATWG URL standard (a browser drops tabs, line breaks and
leading blanks, and reads `\\` as `/`).
"""

import re

SCHEMES = frozenset({"http", "https", "mailto"})
_DROPPED = re.compile(r"[\x00-\x20]")
_SCHEME = re.compile(r"([a-zA-Z][a-zA-Z0-9+.-]*):")


def may_lead(address: str) -> bool:
    """Whether a link may have this address, as a browser would read it."""
    seen = _DROPPED.sub("", address).replace("\\", "/")
    scheme = _SCHEME.match(seen)
    if scheme is not None:
        return scheme[1].lower() in SCHEMES
    return not seen.startswith("//") and ":" not in re.split(r"[/?#]", seen)[0]
