"""What a reader does at a page: opens it at a place, answers, ticks, presses keys, and looks what is shown."""

import json
import time
from typing import Any

from selenium.webdriver.common.keys import Keys

from tests.browser.site import Site
from tests.browser.window import Window

HEAD = "en/larch-p2/replace-the-print-head.html"
BOARD = "en/brindle-e4/replace-the-control-board.html"


class Reader:
    """A reader with a page before them."""

    def __init__(self, browser: Window, site: Site, page: str = HEAD, hash: str = "") -> None:
        self.browser = browser
        browser.screen(1366, 650)
        browser.open(site.url(page) + (f"#{hash}" if hash else ""))

    def run(self, script: str) -> Any:
        """The value of an expression in the page."""
        return self.browser.value(script)

    def after(self, milliseconds: int) -> None:
        """Lets the page work for a while."""
        self.run(f"new Promise(done => setTimeout(() => done(true), {milliseconds}))")

    def seen(self, query: str) -> list[str]:
        """The words of those elements that are shown."""
        found: list[str] = self.run(
            f"Array.from(document.querySelectorAll({json.dumps(query)}))"
            ".filter(one => one.checkVisibility()).map(one => one.innerText.trim())"
        )
        return found

    def press(self, query: str) -> None:
        """A click."""
        self.run(f"document.querySelector({json.dumps(query)}).click()")

    def answer(self, option: str, value: str) -> None:
        """An answer to a question."""
        self.press(f'input[name="{option}"][value="{value}"]')

    def tick(self, id: str) -> None:
        """The box of this id."""
        self.run(f"document.getElementById({json.dumps(id)}).click()")

    def write(self, id: str, words: str) -> None:
        """Words into a field, as typed."""
        self.run(
            f"(() => {{ const one = document.getElementById({json.dumps(id)}); one.value = {json.dumps(words)};"
            " one.dispatchEvent(new Event('input', {bubbles: true})); })()"
        )

    def key(self, key: str) -> None:
        """A key, pressed with nothing in particular in focus."""
        self.browser.key(key)

    def tap(self, query: str) -> None:
        """A finger on an element, which is brought into view first."""
        x, y = self.run(
            f"(() => {{ const one = document.querySelector({json.dumps(query)});"
            " one.scrollIntoView({block: 'center', behavior: 'instant'});"
            " const box = one.getBoundingClientRect();"
            " return [box.left + box.width / 2, box.top + box.height / 2]; })()"
        )
        self.browser.tap(x, y)

    def until(self, expression: str) -> None:
        """Waits until an expression of the page, or of the page that a link led to, holds."""
        for _ in range(200):
            if self.run(f"document.body && ({expression})"):
                return
            time.sleep(0.05)
        raise AssertionError(f"{expression} on {self.run('location.href')}")

    def go(self, site: Site, page: str) -> None:
        """Another page, by the same reader."""
        self.browser.go(site.url(page))
        self.after(300)

    def reload(self) -> None:
        """The page again."""
        self.browser.reload()
        self.after(300)

    @property
    def hash(self) -> str:
        """What stands behind `#`."""
        return str(self.run("location.hash"))


DOWN, UP, RIGHT, LEFT, ESCAPE = (
    Keys.PAGE_DOWN,
    Keys.PAGE_UP,
    Keys.ARROW_RIGHT,
    Keys.ARROW_LEFT,
    Keys.ESCAPE,
)
