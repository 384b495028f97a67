"""A page opened with its own policy taken off, so that escaping alone stands between words and a script."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from tests.browser.chrome import Browser

# Whatever a payload calls is kept; nothing of it may stop the page (an alert would).
_WATCH = """
window.__ran = [];
for (const name of ["alert", "prompt", "confirm", "print"])
  window[name] = (...said) => { window.__ran.push(name + "(" + said + ")"); return true; };
"""
_TOUCH = """
for (const node of document.querySelectorAll("body *"))
  for (const kind of ["mouseover", "mousemove", "pointerenter", "focus", "animationstart"])
    node.dispatchEvent(new Event(kind));
"""


@dataclass(frozen=True)
class Seen:
    """`ran`: calls that came through; `found`: what could have; `words`: payloads that the page shows as words."""

    ran: tuple[str, ...]
    found: tuple[str, ...]
    asked: tuple[str, ...]  # addresses outside of the page's own folder
    words: int

    @property
    def troubles(self) -> tuple[str, ...]:
        """All that must not be."""
        return (*self.ran, *self.found, *self.asked)


@contextmanager
def watching(browser: Browser, bypass: bool = True) -> Iterator[None]:
    """While this lasts, calls are kept, and with `bypass` the pages' policy is off."""
    watch = browser.command("Page.addScriptToEvaluateOnNewDocument", source=_WATCH)
    browser.command("Page.setBypassCSP", enabled=bypass)
    try:
        yield
    finally:
        browser.command("Page.setBypassCSP", enabled=False)
        browser.command("Page.removeScriptToEvaluateOnNewDocument", **watch)


def seen(browser: Browser, page: Path, folder: Path) -> Seen:
    """What comes of opening a page and of touching all that stands in it."""
    browser.open(page.as_uri())
    browser.value(f"(() => {{ {_TOUCH} }})()")
    browser.value("new Promise(done => setTimeout(() => done(true), 50))")
    told = browser.ask("sinks")
    inside = (folder.as_uri() + "/", "data:", "about:", "blob:")
    asked = tuple(f"asked: {url}" for url in browser.asked_for() if not url.startswith(inside))
    return Seen(tuple(told["ran"]), tuple(told["found"]), asked, told["words"])
