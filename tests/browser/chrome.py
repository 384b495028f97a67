"""Chromium, driven as a reader's browser: pages from the disk, any size of screen, light or dark, on paper."""

import base64
import json
import shutil
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from selenium.webdriver import Chrome, ChromeOptions
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.by import By

SCRIPTS = Path(__file__).parent / "scripts"
A4 = (210.0, 297.0)
LETTER = (215.9, 279.4)
_QUIET = (  # no call of its own to a network, which the log would show as ours
    "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --hide-scrollbars "
    "--disable-background-networking --disable-component-update --disable-sync"
)


@dataclass
class Browser:
    """One Chromium for many tests; each opens what it looks at."""

    driver: Chrome

    def command(self, name: str, **words: Any) -> Any:
        """A command of the DevTools protocol."""
        return self.driver.execute_cdp_cmd(name, words)

    def screen(self, width: int, height: int = 900, scheme: str = "light", zoom: float = 1) -> None:
        """The size in CSS pixels before zooming in, and the colour scheme of the system."""
        self.command(
            "Emulation.setDeviceMetricsOverride",
            width=round(width / zoom),
            height=round(height / zoom),
            deviceScaleFactor=zoom,
            mobile=False,
        )
        scheme_now = {"name": "prefers-color-scheme", "value": scheme}
        still = {"name": "prefers-reduced-motion", "value": "reduce"}
        self.command("Emulation.setEmulatedMedia", features=[scheme_now, still])

    def open(self, url: str, scripts: bool = True) -> None:
        """Open a page as if for the first time: nothing is kept of what a reader did before."""
        self.command("Emulation.setScriptExecutionDisabled", value=not scripts)
        self.driver.get("about:blank")
        self.command("Storage.clearDataForOrigin", origin="file://", storageTypes="all")
        self.log("browser")
        self.log("performance")
        self.go(url)

    def go(self, url: str) -> None:
        """Open a page as the same reader does who was here before."""
        self.driver.get(url)

    def reload(self) -> None:
        """The page again."""
        self.driver.refresh()

    def key(self, key: str) -> None:
        """A key, pressed with nothing in particular in focus."""
        self.driver.find_element(By.TAG_NAME, "body").send_keys(key)

    def tap(self, x: float, y: float) -> None:
        """A finger at a place of the window, in CSS pixels."""
        self.swipe((x, y), (x, y))

    def swipe(self, start: tuple[float, float], end: tuple[float, float]) -> None:
        """A finger drawn from one place to another."""
        middle = tuple((a + b) / 2 for a, b in zip(start, end, strict=True))
        places = [start] if start == end else [start, middle, end]
        for kind, (x, y) in zip(("touchStart", "touchMove", "touchMove"), places, strict=False):
            self.command("Input.dispatchTouchEvent", type=kind, touchPoints=[{"x": x, "y": y}])
        self.command("Input.dispatchTouchEvent", type="touchEnd", touchPoints=[])

    def log(self, name: str) -> list[dict[str, Any]]:
        """What came since the log was last read."""
        return self.driver.get_log(name)  # type: ignore[no-any-return, no-untyped-call]

    def complaints(self) -> list[str]:
        """What the console said since the page was opened: errors and blocked things are among it."""
        return [entry["message"] for entry in self.log("browser") if entry["level"] != "INFO"]

    def asked_for(self) -> list[str]:
        """Every address that was asked for since the page was opened."""
        told = [json.loads(entry["message"])["message"] for entry in self.log("performance")]
        sent = [one for one in told if one["method"] == "Network.requestWillBeSent"]
        return [one["params"]["request"]["url"] for one in sent]

    def ask(self, script: str, **words: Any) -> Any:
        """What a script of `scripts/` returns of the page; it stands outside of the page's own rules.

        The file holds one function of one value.
        """
        source = (SCRIPTS / f"{script}.js").read_text(encoding="utf-8")
        return self.value(f"({source})({json.dumps(words)})")

    def value(self, expression: str) -> Any:
        """The value of an expression in the page, awaited."""
        answer = self.command(
            "Runtime.evaluate", expression=expression, awaitPromise=True, returnByValue=True
        )
        assert "exceptionDetails" not in answer, answer["exceptionDetails"]
        return answer["result"].get("value")

    def printed(self, paper: tuple[float, float]) -> bytes:
        """The page as the browser prints it, in mm, with the page's own margins and no browser header."""
        answer = self.command(
            "Page.printToPDF",
            paperWidth=paper[0] / 25.4,
            paperHeight=paper[1] / 25.4,
            preferCSSPageSize=True,
            printBackground=False,
        )
        return base64.b64decode(answer["data"])


def started() -> Browser:
    """A fresh Chromium with a profile of its own."""
    options = ChromeOptions()
    for flag in _QUIET.split():
        options.add_argument(flag)
    options.binary_location = shutil.which("chromium") or ""
    options.set_capability("goog:loggingPrefs", {"browser": "ALL", "performance": "ALL"})
    driver = shutil.which("chromedriver")
    return Browser(Chrome(options, Service(driver)))  # told, so that none is looked for elsewhere
