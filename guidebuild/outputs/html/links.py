"""Where an author's link leads in the site: to a step of the same guide, or to another guide; else nowhere."""

from collections.abc import Callable, Container
from posixpath import join, normpath, relpath
from urllib.parse import unquote

from guidebuild.guide.guide import Guide

Links = Callable[[str], str | None]


def links(guide: Guide, guides: Container[str]) -> Links:
    """`guides`: content paths of all guides in the site. What leads out of it is shown as words, not as a link."""
    steps = frozenset(step.id for step in guide.steps)
    folder = guide.path.rpartition("/")[0]

    def link(href: str) -> str | None:
        path, _, place = href.partition("#")
        if not path:
            return f"#{place}" if place in steps else None
        target = normpath(join(folder, unquote(path)))
        if target not in guides:
            return None
        page = relpath(target, folder or ".").removesuffix(".md") + ".html"
        return f"{page}#{place}" if place.replace("-", "").isalnum() else page

    return link
