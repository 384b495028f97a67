"""Answers on the loopback address: pages, what stands beside them, and the one thing that may be written."""

import json
import secrets
from hashlib import sha256
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from importlib.resources import files
from mimetypes import guess_type
from typing import Any
from urllib.parse import parse_qs, unquote, urlsplit

from guidebuild.build.preview.clicks import click_of
from guidebuild.build.preview.pages import Pages
from guidebuild.build.preview.place import NoPlace

ADDRESS = "127.0.0.1"  # never another: who is not at this machine has no business here
LONGEST = 10_000  # bytes of what a page may send
WAIT = 20.0  # seconds that a page waits for news in one go
OWN = ("client.js", "client.css")


class Server(ThreadingHTTPServer):
    """`token` is new each time; only pages that this server gave out know it."""

    daemon_threads = True

    def __init__(self, pages: Pages, port: int = 0) -> None:
        super().__init__((ADDRESS, port), _Handler)
        self.pages = pages
        self.token = secrets.token_urlsafe(24)
        self.hosts = {f"{name}:{self.server_port}" for name in (ADDRESS, "localhost")}


class _Handler(BaseHTTPRequestHandler):
    server: Server
    protocol_version = "HTTP/1.1"

    def do_GET(self) -> None:
        """A page, a file of ours, or news."""
        if not self._is_asked_here():
            return
        url = urlsplit(self.path)
        path, query = unquote(url.path).lstrip("/"), parse_qs(url.query)
        if path == "preview/wait":
            page, version = ("".join(query.get(name, [""])) for name in ("page", "version"))
            self._data({"version": self.server.pages.wait(page, version, WAIT)})
        elif path == "preview/told":
            self._data(self.server.pages.told("".join(query.get("page", [""]))))
        elif path.removeprefix("preview/") in OWN:
            name = path.removeprefix("preview/")
            body = files("guidebuild.build.preview").joinpath(name).read_bytes()
            self._answer(HTTPStatus.OK, body, guess_type(name)[0] or "text/plain")
        else:
            self._page(path or "START.html")

    def do_POST(self) -> None:
        """A place, from a page of ours and from nowhere else."""
        if not self._is_asked_here() or not self._may_write():
            return
        try:
            size = int(self.headers.get("Content-Length", ""))
            data = json.loads(self.rfile.read(size)) if 0 < size <= LONGEST else None
        except (ValueError, RecursionError):  # brackets without end
            data = None
        if not isinstance(data, dict):
            self._data({"error": "That is no place on a picture."}, HTTPStatus.BAD_REQUEST)
            return
        try:
            path = self.server.pages.place(str(data.get("page", "")), click_of(data))
        except (NoPlace, OSError) as error:
            self._data({"error": str(error)}, HTTPStatus.CONFLICT)
            return
        self._data({"written": path})

    def _is_asked_here(self) -> bool:
        """A name that was made to lead here from elsewhere is refused: that is how other pages would read ours."""
        if self.headers.get("Host", "") in self.server.hosts:
            return True
        self._data({"error": "This page is for this machine only."}, HTTPStatus.FORBIDDEN)
        return False

    def _may_write(self) -> bool:
        """Our path, our origin, our token, as data: no form and no page from elsewhere can send all of these."""
        headers = self.headers
        ours = (
            urlsplit(self.path).path == "/preview/place",
            headers.get("Origin", "") in {f"http://{host}" for host in self.server.hosts},
            headers.get("Sec-Fetch-Site", "same-origin") == "same-origin",
            headers.get("Content-Type", "").partition(";")[0] == "application/json",
            secrets.compare_digest(
                headers.get("X-Preview-Token", "").encode(), self.server.token.encode()
            ),
        )
        if all(ours):
            return True
        self.close_connection = True  # what it still sends is not read
        self._data({"error": "A page from elsewhere can't write here."}, HTTPStatus.FORBIDDEN)
        return False

    def _page(self, path: str) -> None:
        body = self.server.pages.files.get(path)
        if body is None:
            self._answer(HTTPStatus.NOT_FOUND, b"There is no such page.", "text/plain")
            return
        kind = guess_type(path)[0] or "application/octet-stream"
        if kind == "text/html":
            self._answer(HTTPStatus.OK, self._with_client(body, path), kind)
            return
        mark = f'"{sha256(body).hexdigest()[:20]}"'  # sheets, scripts and fonts are kept until they change
        known = self.headers.get("If-None-Match") == mark
        status = HTTPStatus.NOT_MODIFIED if known else HTTPStatus.OK
        self._answer(status, b"" if known else body, kind, mark)

    def _with_client(self, body: bytes, path: str) -> bytes:
        """The page may ask this server, and nothing else; its own rules stay."""
        head = (
            f'<link rel="stylesheet" href="/preview/client.css"><script src="/preview/client.js" defer '
            f'data-token="{self.server.token}" data-page="{path}" data-version="{self.server.pages.version(path)}">'
            "</script></head>"
        )
        body = body.replace(b"connect-src 'none'", b"connect-src 'self'", 1)
        return body.replace(b"</head>", head.encode(), 1)

    def _data(self, data: dict[str, Any], status: HTTPStatus = HTTPStatus.OK) -> None:
        self._answer(status, json.dumps(data).encode(), "application/json")

    def _answer(self, status: HTTPStatus, body: bytes, kind: str, mark: str = "") -> None:
        self.send_response(status)
        text = kind.startswith("text/") or kind.endswith(("javascript", "json"))
        self.send_header("Content-Type", f"{kind}; charset=utf-8" if text else kind)
        if status is not HTTPStatus.NOT_MODIFIED:
            self.send_header("Content-Length", str(len(body)))
        self.send_header("Cache-Control", "no-cache" if mark else "no-store")
        if mark:
            self.send_header("ETag", mark)
        self.send_header("X-Content-Type-Options", "nosniff")
        self.send_header("X-Frame-Options", "DENY")
        self.send_header("Cross-Origin-Resource-Policy", "same-origin")
        self.end_headers()
        try:
            self.wfile.write(body)
        except OSError:  # the reader has gone on
            self.close_connection = True

    def log_message(self, format: str, *args: Any) -> None:
        """The terminal is for what matters."""
