"""The server: loopback only, the strict policy on every answer, nothing outside the folder."""

import http.client
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from build_scripts import serve


@pytest.fixture
def ask(tmp_path: Path) -> Iterator[Any]:
    """Ask a server over a small folder."""
    folder = tmp_path / "site"
    (folder / "runtime" / "abc").mkdir(parents=True)
    (folder / "index.html").write_text("<p>" + "start " * 200, encoding="utf-8")
    (folder / "404.html").write_text("not here", encoding="utf-8")
    (folder / "runtime" / "abc" / "x.wasm").write_bytes(b"\0asm")
    (tmp_path / "secret.txt").write_text("secret", encoding="utf-8")
    server, _thread = serve.start(0, folder)

    def ask(path: Any, method: str = "GET", **headers: Any) -> Any:
        connection = http.client.HTTPConnection("127.0.0.1", server.server_port, timeout=10)
        connection.request(method, path, headers=headers)
        answer = connection.getresponse()
        body = answer.read()
        connection.close()
        return answer, body

    yield ask
    server.shutdown()
    server.server_close()


def test_every_answer_carries_the_policy(ask: Any) -> None:
    for path in ("/", "/nowhere.html"):
        answer, _body = ask(path)
        policy = answer.headers["Content-Security-Policy"]
        assert "script-src 'self' 'wasm-unsafe-eval'" in policy
        assert "unsafe-inline" not in policy
        assert answer.headers["X-Content-Type-Options"] == "nosniff"


def test_files_and_their_kinds(ask: Any) -> None:
    answer, body = ask("/")
    assert (answer.status, answer.headers["Content-Type"]) == (200, "text/html; charset=utf-8")
    assert body.startswith(b"<p>start")
    answer, body = ask("/index.html", **{"Accept-Encoding": "gzip"})
    assert answer.headers["Content-Encoding"] == "gzip"
    assert len(body) < 200
    answer, body = ask("/runtime/abc/x.wasm")
    assert answer.headers["Content-Type"] == "application/wasm"
    assert "immutable" in answer.headers["Cache-Control"]
    answer, body = ask("/index.html", method="HEAD")
    assert body == b""
    assert int(answer.headers["Content-Length"]) > 1000


@pytest.mark.parametrize("path", ["/nowhere.html", "/../secret.txt", "/%2e%2e/secret.txt", "//etc/passwd"])
def test_nothing_outside_the_folder(ask: Any, path: str) -> None:
    answer, body = ask(path)
    assert answer.status == 404
    assert body == b"not here"


def test_a_port_in_use_is_said_in_one_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    server, _thread = serve.start(0, tmp_path)
    monkeypatch.setattr(sys, "argv", ["serve", "--port", str(server.server_port)])
    assert serve.main() == 1
    error = capsys.readouterr().err
    assert (
        error
        == f"port {server.server_port} is in use; give another, such as --port {server.server_port + 1}\n"
    )
    server.shutdown()
    server.server_close()
