"""A static server for this machine alone, as strict as the page asks to be served.

For `serve`, for the tests and for the bench:

    with serving.started(folder) as server:
        browser.open(server.address)
"""

import gzip
import hashlib
import html
import re
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from functools import lru_cache
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import NamedTuple
from urllib.parse import unquote, urlsplit

TYPES = {
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".json": "application/json",
    ".webmanifest": "application/manifest+json",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".wasm": "application/wasm",
}
# What static hosts usually compress; sizes and the bench count on the same.
SQUEEZED = {".html", ".js", ".mjs", ".css", ".json", ".webmanifest", ".svg", ".wasm"}
POLICY = re.compile(r'http-equiv="Content-Security-Policy"\s+content="([^"]*)"')


class Content(NamedTuple):
    """One file, ready to be sent."""

    plain: bytes
    squeezed: bytes | None
    tag: str


def is_squeezed(name: str) -> bool:
    """Whether a file of this name is sent compressed."""
    return Path(name).suffix in SQUEEZED


@lru_cache(maxsize=256)
def _content(file: Path, _written: int, _size: int) -> Content:
    plain = file.read_bytes()
    squeezed = gzip.compress(plain, 6) if is_squeezed(file.name) else None
    return Content(plain, squeezed, f'"{hashlib.sha256(plain).hexdigest()[:24]}"')


def _policy(folder: Path) -> str | None:
    """Return the policy that the folder's page states, for its worker inherits none."""
    page = folder / "index.html"
    stated = POLICY.search(page.read_text(encoding="utf-8")) if page.is_file() else None
    return f"{html.unescape(stated[1])}; frame-ancestors 'none'" if stated else None


class Handler(BaseHTTPRequestHandler):
    """Answers GET and HEAD with files of the server's folder."""

    server: "Server"
    protocol_version = "HTTP/1.1"
    # Headers and body leave in one go; else each answer waits for the client's acknowledgement.
    wbufsize = -1
    disable_nagle_algorithm = True

    def do_GET(self) -> None:
        """Send a file, or the reason why not."""
        file = self._file()
        if file is None:
            self.send_error(HTTPStatus.NOT_FOUND)
            return
        about = file.stat()
        content = _content(file, about.st_mtime_ns, about.st_size)
        fresh = self.headers.get("If-None-Match") == content.tag
        wants_gzip = "gzip" in self.headers.get("Accept-Encoding", "")
        squeezed = content.squeezed if wants_gzip else None
        body = b"" if fresh else content.plain if squeezed is None else squeezed
        self.send_response(HTTPStatus.NOT_MODIFIED if fresh else HTTPStatus.OK)
        self.send_header("ETag", content.tag)
        self.send_header("Cache-Control", "no-cache")
        self.send_header("Vary", "Accept-Encoding")
        self.send_header("X-Content-Type-Options", "nosniff")
        if policy := _policy(self.server.folder):
            self.send_header("Content-Security-Policy", policy)
        if not fresh:
            self.send_header("Content-Type", TYPES.get(file.suffix, "application/octet-stream"))
            self.send_header("Content-Length", str(len(body)))
            if squeezed is not None:
                self.send_header("Content-Encoding", "gzip")
        self.end_headers()
        if self.command == "GET":
            self.wfile.write(body)

    do_HEAD = do_GET  # noqa: N815

    def _file(self) -> Path | None:
        folder = self.server.folder.resolve()
        path = unquote(urlsplit(self.path).path).lstrip("/")
        with suppress(ValueError):  # a zero byte in the path
            file = (folder / path).resolve()
            if file.is_dir() and self.path.endswith("/"):
                file /= "index.html"
            if file.is_file() and file.is_relative_to(folder):
                return file
        return None

    def log_message(self, *_: object) -> None:
        """Say nothing; the browser's own tools show every request."""


class Server(ThreadingHTTPServer):
    """A server of `folder` (may be exchanged while it runs) on `port`, 0 for any free one."""

    daemon_threads = True

    def __init__(self, folder: Path, port: int = 0) -> None:
        self.folder = folder
        self._open: set[socket.socket] = set()
        super().__init__(("127.0.0.1", port), Handler)

    @property
    def address(self) -> str:
        """Where the folder is found; `localhost` counts as secure for a service worker."""
        return f"http://localhost:{self.server_port}/"

    def process_request(self, request: socket.socket, client_address: tuple) -> None:
        """Note the connection, so that `stop` can end it."""
        self._open.add(request)
        super().process_request(request, client_address)

    def shutdown_request(self, request: socket.socket) -> None:
        """Forget a connection that has ended."""
        self._open.discard(request)
        super().shutdown_request(request)

    def handle_error(self, *_: object) -> None:
        """A browser that goes away amid an answer is no fault of ours."""

    def stop(self) -> None:
        """Stop for good: no new connections, and those kept alive are cut."""
        self.shutdown()
        self.server_close()
        for each in list(self._open):
            with suppress(OSError):
                each.shutdown(socket.SHUT_RDWR)


@contextmanager
def started(folder: Path, port: int = 0) -> Iterator[Server]:
    """Serve `folder` in the background until the block ends, or `stop` is called in it."""
    server = Server(folder, port)
    thread = threading.Thread(target=server.serve_forever, args=(0.05,), daemon=True)
    thread.start()
    try:
        yield server
    finally:
        server.stop()
        thread.join()
