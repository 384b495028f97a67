"""Firefox, driven as a reader's browser. Its automation relaxes the rules for files; here they hold as for a reader."""

import json
import shutil
import subprocess
import time
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tests.browser.bidi import PATIENCE, Line, connected, plain

_RULES = {
    "security.fileuri.strict_origin_policy": True,
    "remote.prefs.recommended": False,
    "browser.shell.checkDefaultBrowser": False,
    "browser.startup.homepage_override.mstone": "ignore",
    "datareporting.policy.dataSubmissionEnabled": False,
    "toolkit.telemetry.reportingpolicy.firstRun": False,
    "app.update.enabled": False,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "ui.prefersReducedMotion": 1,
    "dom.w3c_touch_events.enabled": 1,
}


@dataclass
class Firefox:
    """One Firefox; `reader` keeps what a page stores, `tab` is what that reader looks at."""

    process: subprocess.Popen[bytes]
    line: Line
    reader: str = ""
    tab: str = ""
    size: tuple[int, int] = (1366, 650)

    def screen(self, width: int, height: int = 900) -> None:
        self.size = (width, height)
        if self.tab:
            viewport = {"width": width, "height": height}
            self.line.command("browsingContext.setViewport", context=self.tab, viewport=viewport)

    def open(self, url: str) -> None:
        if self.reader:
            self.line.command("browser.removeUserContext", userContext=self.reader)
        self.reader = self.line.command("browser.createUserContext")["userContext"]
        made = self.line.command("browsingContext.create", type="tab", userContext=self.reader)
        self.tab = made["context"]
        self.screen(*self.size)
        self.line.events.clear()
        self.go(url)

    def go(self, url: str) -> None:
        self.line.command("browsingContext.navigate", context=self.tab, url=url, wait="complete")

    def reload(self) -> None:
        self.line.command("browsingContext.reload", context=self.tab, wait="complete")

    def value(self, expression: str) -> Any:
        told = self.line.command(
            "script.evaluate",
            expression=expression,
            target={"context": self.tab},
            awaitPromise=True,
        )
        assert told["type"] == "success", told
        return plain(told["result"])

    def key(self, key: str) -> None:
        self._act("key", [{"type": "keyDown", "value": key}, {"type": "keyUp", "value": key}])

    def tap(self, x: float, y: float) -> None:
        self.swipe((x, y), (x, y))

    def swipe(self, start: tuple[float, float], end: tuple[float, float]) -> None:
        down, up = {"type": "pointerDown", "button": 0}, {"type": "pointerUp", "button": 0}
        self._act("pointer", [_to(start), down, _to(end), up], parameters={"pointerType": "touch"})

    def complaints(self) -> list[str]:
        self.value("1")  # what the page still had to say is told by now
        said = [one for name, one in self.line.events if name == "log.entryAdded"]
        return [f"{one['text']}" for one in said if one["level"] in {"warn", "error"}]

    def asked_for(self) -> list[str]:
        self.value("1")
        asked = [one for name, one in self.line.events if name == "network.beforeRequestSent"]
        return [one["request"]["url"] for one in asked]

    def _act(self, kind: str, actions: list[dict[str, Any]], **words: Any) -> None:
        source = {"type": kind, "id": kind, "actions": actions, **words}
        self.line.command("input.performActions", context=self.tab, actions=[source])

    def quit(self) -> None:
        """Ends it."""
        self.line.command("browser.close")
        self.line.socket.close()
        self.process.wait(PATIENCE)


def _to(place: tuple[float, float]) -> dict[str, Any]:
    return {"type": "pointerMove", "x": round(place[0]), "y": round(place[1]), "duration": 50}


def started(profile: Path) -> Firefox:
    """A fresh Firefox with a profile of its own."""
    rules = [f"user_pref({json.dumps(key)}, {json.dumps(rule)});" for key, rule in _RULES.items()]
    (profile / "user.js").write_text("\n".join(rules), encoding="utf-8")
    command = [shutil.which("firefox-esr") or "firefox-esr", "--headless", "--no-remote"]
    process = subprocess.Popen(
        [*command, "--profile", str(profile), "--remote-debugging-port", "0"],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    line = connected(_port(profile / "WebDriverBiDiServer.json"))
    line.command("session.new", capabilities={})
    line.command("session.subscribe", events=["log.entryAdded", "network.beforeRequestSent"])
    return Firefox(process, line)


def _port(file: Path) -> int:
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        if file.is_file() and (said := file.read_text(encoding="utf-8")):
            return int(json.loads(said)["ws_port"])
        time.sleep(0.05)
    raise AssertionError("Firefox does not listen")
