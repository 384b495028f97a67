"""A preview of a copy of the demo, running for one test module."""

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from guidebuild.build.preview.pages import Pages
from guidebuild.build.preview.server import Server
from tests.plan.drafted import copied

HEAD = "en/larch-p2/replace-the-print-head.html"


@dataclass
class Preview:
    """The folder that is shown, and where."""

    root: Path
    server: Server

    @property
    def url(self) -> str:
        return f"http://127.0.0.1:{self.server.server_port}"

    @property
    def record(self) -> Path:
        return self.root / "devices/larch-p2/device.yaml"


@contextmanager
def previewed(to: Path) -> Iterator[Preview]:
    root = copied(to)
    pages = Pages(root)
    server = Server(pages)
    pages.build()
    stop = threading.Event()
    threads = [
        threading.Thread(target=pages.watch, args=(stop,), daemon=True),
        threading.Thread(target=server.serve_forever, args=(0.05,), daemon=True),
    ]
    for one in threads:
        one.start()
    yield Preview(root, server)
    stop.set()
    server.shutdown()
    server.server_close()
    for one in threads:
        one.join(30)
