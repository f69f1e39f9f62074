"""Serves `site/` on this machine alone, and builds again when a page, a table or the code changes.

Sends the content policy that the site is made for, so that anything a strict host would refuse is refused here too.
"""

from __future__ import annotations

import argparse
import functools
import gzip
import http.server
import subprocess
import sys
import threading
import time
from http import HTTPStatus
from pathlib import Path
from urllib.parse import unquote, urlsplit

ROOT = Path(__file__).resolve().parent.parent
SITE = ROOT / "site"
WATCHED = ("docs", "calc", "tables", "build_scripts", "mkdocs.yml")

CONTENT_POLICY = "; ".join(
    (
        "default-src 'self'",
        "script-src 'self' 'wasm-unsafe-eval'",
        "style-src 'self'",
        "img-src 'self' data:",
        "worker-src 'self'",
        "connect-src 'self'",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
        "frame-ancestors 'none'",
        "require-trusted-types-for 'script'",
        "trusted-types linkwright",
    )
)

MEDIA_TYPES = {
    ".html": "text/html; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".csv": "text/csv; charset=utf-8",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".ico": "image/x-icon",
    ".wasm": "application/wasm",
    ".woff2": "font/woff2",
    ".webmanifest": "application/manifest+json",
    ".xml": "application/xml",
    ".zip": "application/zip",
    ".sqlite": "application/vnd.sqlite3",
    ".pdf": "application/pdf",
    ".txt": "text/plain; charset=utf-8",
}
SQUEEZED = {
    ".html",
    ".css",
    ".js",
    ".mjs",
    ".json",
    ".csv",
    ".svg",
    ".wasm",
    ".webmanifest",
    ".xml",
    ".txt",
    ".zip",
}


HEADERS = {
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
}
"""What every answer carries besides its content policy."""
FOR_GOOD = "public, max-age=31536000, immutable"
ASK_AGAIN = "no-cache"


def is_named_by_content(path: Path) -> bool:
    """Whether a file may be kept for good: a runtime file's folder is named by its content."""
    return "runtime" in path.parts and path.parent.name != "runtime"


def _tag(path: Path, squeeze: bool) -> str:
    """What names a file's content for a browser that has it already."""
    seen = path.stat()
    return f'"{seen.st_mtime_ns:x}-{seen.st_size:x}{"-gz" if squeeze else ""}"'


@functools.lru_cache(maxsize=512)
def _content(path: str, changed_ns: int, squeeze: bool) -> bytes:
    del changed_ns  # part of the key only: a changed file is read again
    data = Path(path).read_bytes()
    return gzip.compress(data, 6, mtime=0) if squeeze else data


class Handler(http.server.BaseHTTPRequestHandler):
    """Answers GET and HEAD from one folder."""

    protocol_version = "HTTP/1.1"
    folder: Path = SITE
    policy: str = CONTENT_POLICY

    def do_GET(self) -> None:
        """Send a file."""
        self._answer(with_body=True)

    def do_HEAD(self) -> None:
        """Send a file's headers."""
        self._answer(with_body=False)

    def file(self) -> Path | None:
        """The file that is asked for, or nothing."""
        wanted = unquote(urlsplit(self.path).path)
        if wanted.endswith("/"):
            wanted += "index.html"
        path = (self.folder / wanted.lstrip("/")).resolve()
        inside = path.is_relative_to(self.folder.resolve())
        return path if inside and path.is_file() else None

    def _answer(self, with_body: bool) -> None:
        path = self.file()
        status = HTTPStatus.OK
        if path is None:
            status = HTTPStatus.NOT_FOUND
            path = self.folder / "404.html"
            if not path.is_file():
                self.send_error(status)
                return
        squeeze = path.suffix in SQUEEZED and "gzip" in self.headers.get("Accept-Encoding", "")
        tag = _tag(path, squeeze)
        if status is HTTPStatus.OK and self.headers.get("If-None-Match") == tag:
            self.send_response(HTTPStatus.NOT_MODIFIED)
            self._send_common(path, tag)
            self.end_headers()
            return
        data = self.content(path, squeeze)
        self.send_response(status)
        self.send_header("Content-Type", MEDIA_TYPES.get(path.suffix, "application/octet-stream"))
        self.send_header("Content-Length", str(len(data)))
        if squeeze:
            self.send_header("Content-Encoding", "gzip")
        self._send_common(path, tag)
        self.end_headers()
        if with_body:
            try:
                self.send_content(data)
            except (BrokenPipeError, ConnectionResetError):
                self.close_connection = True

    def content(self, path: Path, squeeze: bool) -> bytes:
        """What is sent of a file."""
        return _content(str(path), path.stat().st_mtime_ns, squeeze)

    def send_content(self, data: bytes) -> None:
        """Send it."""
        self.wfile.write(data)

    def _send_common(self, path: Path, tag: str) -> None:
        """The headers that a file has whether it is sent or not."""
        self.send_header("Vary", "Accept-Encoding")
        self.send_header("ETag", tag)
        self.send_header("Cache-Control", FOR_GOOD if is_named_by_content(path) else ASK_AGAIN)
        self.send_header("Content-Security-Policy", self.policy)
        for name, value in HEADERS.items():
            self.send_header(name, value)

    def log_message(self, format: str, *args: object) -> None:
        """Keep quiet: a log of requests is of no use on a shop's machine."""


class Server(http.server.ThreadingHTTPServer):
    """Serves on loopback."""

    daemon_threads = True

    def handle_error(self, request: object, client_address: object) -> None:
        """Say nothing of a reader who went away in the middle of an answer."""
        if not isinstance(sys.exc_info()[1], ConnectionError):
            super().handle_error(request, client_address)  # type: ignore[arg-type]  # the stub's private union


def start(
    port: int = 0, folder: Path = SITE, policy: str = CONTENT_POLICY
) -> tuple[Server, threading.Thread]:
    """Start serving `folder` in a thread; port 0 takes a free one."""
    handler = type("FolderHandler", (Handler,), {"folder": folder, "policy": policy})
    server = Server(("127.0.0.1", port), handler)
    thread = threading.Thread(target=server.serve_forever, daemon=True)
    thread.start()
    return server, thread


def _stamp() -> dict[str, int]:
    """When each watched file last changed."""
    stamps: dict[str, int] = {}
    for name in WATCHED:
        place = ROOT / name
        for path in [place] if place.is_file() else place.rglob("*"):
            if path.is_file() and "__pycache__" not in path.parts:
                stamps[str(path)] = path.stat().st_mtime_ns
    return stamps


def _rebuild(changed: list[str], here: bool) -> None:
    """Build again: in this process if only words changed, else afresh, because loaded code may be out of date."""
    names = ", ".join(Path(path).relative_to(ROOT).as_posix() for path in changed[:3])
    print(f"changed: {names}", flush=True)
    start = time.monotonic()
    if here:
        from build_scripts.build import build_words

        build_words()
    else:
        subprocess.run([sys.executable, "-m", "build_scripts.build"], cwd=ROOT, check=False)
    print(f"  {time.monotonic() - start:.1f} s", flush=True)


def _is_page(path: Path) -> bool:
    """Whether a file is a page's own; the catalogue of words is read once by a process, so it wants a fresh one."""
    return path.is_relative_to(ROOT / "docs") and not path.is_relative_to(ROOT / "docs" / "words")


def watch() -> None:
    """Build again whenever something changes, until stopped."""
    before = _stamp()
    only_words = True
    while True:
        time.sleep(0.3)
        now = _stamp()
        changed = sorted(path for path in {**before, **now} if before.get(path) != now.get(path))
        if changed:
            only_words = only_words and all(_is_page(Path(path)) for path in changed)
            _rebuild(changed, here=only_words)
            now = _stamp()
        before = now


def main() -> int:
    """Serve until stopped."""
    parser = argparse.ArgumentParser(prog="handbook.py serve")
    parser.add_argument("--port", type=int, default=8000)
    parser.add_argument("--no-watch", action="store_true", help="serve only; do not build again on a change")
    asked = parser.parse_args()
    try:
        server, thread = start(asked.port)
    except OSError:
        sys.stderr.write(f"port {asked.port} is in use; give another, such as --port {asked.port + 1}\n")
        return 1
    print(f"The handbook is at http://127.0.0.1:{server.server_port}/  (Ctrl+C stops it)", flush=True)
    try:
        if asked.no_watch:
            thread.join()
        else:
            watch()
    except KeyboardInterrupt:
        print("stopped")
    return 0


if __name__ == "__main__":
    sys.exit(main())
