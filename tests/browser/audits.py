"""Questions that are asked of a page that is open: does it fold, is it legible, does a barrier stand in it?"""

from collections.abc import Iterable

from tests.browser.checkers import AXE
from tests.browser.chrome import Browser

WIDTHS = (320, 390, 540, 683, 820, 1000, 1130, 1366, 1440, 1920)
_STANDARD = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
_OF_COLOUR = ["color-contrast", "link-in-text-block"]  # the rules that a dark scheme can break


def barriers(browser: Browser) -> list[str]:
    """What axe-core finds by the rules of WCAG 2.2, A and AA, and of good practice."""
    return _axe(browser, {"type": "tag", "values": _STANDARD})


def barriers_of_colour(browser: Browser) -> list[str]:
    """The same by the rules of colour alone."""
    return _axe(browser, {"type": "rule", "values": _OF_COLOUR})


def _axe(browser: Browser, only: dict[str, object]) -> list[str]:
    if not browser.value("Boolean(window.axe)"):
        browser.value(AXE.read_text(encoding="utf-8") + "; true")
    found: list[str] = browser.ask("axe", only=only)
    return found


def unfolded(browser: Browser, widths: Iterable[int] = WIDTHS) -> dict[int, list[str]]:
    """What sticks out of the screen or of its block, by the screen's width (WCAG 2.2, 1.4.10 reflow)."""
    found = {}
    for width in widths:
        browser.screen(width)
        if told := browser.ask("wider") + browser.ask("cut"):
            found[width] = told[:6]
    return found


def faint(browser: Browser) -> list[str]:
    """Text below 7 : 1, by the formula of WCAG 2.2 (1.4.6), in drawings, too."""
    found: list[str] = browser.ask("contrast", least=7)
    return found
