"""WebDriver BiDi (W3C) over one socket: commands with their answers, and the events that came in between.

Selenium speaks to Firefox only by way of a further program, which Debian does not pack; Firefox itself answers this.
"""

import json
from dataclasses import dataclass, field
from typing import Any

from websocket import WebSocket, create_connection

PATIENCE = 60.0  # s that an answer may take on a busy machine


@dataclass
class Line:
    """A connection; `events` are (method, params) in order."""

    socket: WebSocket
    events: list[tuple[str, dict[str, Any]]] = field(default_factory=list)
    _count: int = 0

    def command(self, method: str, **params: Any) -> Any:
        """The result of a command; an error that the browser tells is raised."""
        self._count += 1
        self.socket.send(json.dumps({"id": self._count, "method": method, "params": params}))
        while True:
            said = json.loads(self.socket.recv())
            if said.get("type") == "event":
                self.events.append((said["method"], said["params"]))
            elif said.get("id") == self._count:
                assert said["type"] == "success", said
                return said["result"]


def connected(port: int) -> Line:
    """A line to a browser that listens."""
    address = f"ws://127.0.0.1:{port}/session"
    return Line(create_connection(address, timeout=PATIENCE, suppress_origin=True))


def plain(remote: dict[str, Any]) -> Any:
    """The value that the browser sent in its own form (section "script.RemoteValue")."""
    match remote["type"]:
        case "array":
            return [plain(one) for one in remote["value"]]
        case "object":
            return {key: plain(one) for key, one in remote["value"]}
        case "undefined" | "null":
            return None
        case "string" | "number" | "boolean":
            return remote["value"]
    return remote["type"]
