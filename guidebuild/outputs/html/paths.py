"""Where the files of a site lie: names that a FAT stick and every browser take."""

import re
from pathlib import PurePosixPath

START = "START.html"
RULES = "rules.html"


def portable(name: str) -> str:
    """Small letters, digits, `.`, `_` and `-` only."""
    return re.sub(r"[^a-z0-9._-]+", "-", name.lower()).strip("-.") or "x"


def start_page(language: str, first: str) -> str:
    """The start page: START.html in the first language, `de/START.html` in the others."""
    return START if language == first else f"{portable(language)}/{START}"


def guide_page(path: str, language: str) -> str:
    """The page of the guide at a content path: `en/larch-p2/replace-the-print-head.html`."""
    parts = PurePosixPath(path).with_suffix("").parts
    inside = parts[1:] if parts[0] == "guides" else parts
    return "/".join((language.lower(), *(portable(part) for part in inside))) + ".html"


def tray_page(path: str, language: str) -> str:
    """The tray sheet beside it."""
    return guide_page(path, language).removesuffix(".html") + "-tray.html"


def root_of(path: str) -> str:
    """How a page at this site path gets to the root: `../../`."""
    return "../" * path.count("/")
