"""The check of a host: our own server passes, and whatever a host does wrong is named."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from build_scripts import host_check, serve
from build_scripts.seal import integrity

FILES = {
    "index.html": b"<html>" + b"<p>start</p>" * 200,
    "scripts/site.js": b"'use strict';" + b" " * 2000,
    "runtime/0123456789abcdef/x.wasm": b"\0asm" + b"\0" * 2000,
}
Serve = Callable[[type[serve.Handler]], str]


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A small site with its list."""
    for name, data in FILES.items():
        path = tmp_path / "site" / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)
    (tmp_path / "site" / "404.html").write_text("<html>not here", encoding="utf-8")
    entries = [{"revision": None, "url": name, "integrity": integrity(data)} for name, data in FILES.items()]
    (tmp_path / "site" / "offline-worker.js").write_text(f"const e={json.dumps(entries)};" + " " * 2000)
    return tmp_path / "site"


@pytest.fixture
def hosted(folder: Path) -> Iterator[Callable[..., str]]:
    """Serves the folder, with some of a handler's ways changed."""
    servers = []

    def begin(**ways: object) -> str:
        handler = type("Host", (serve.Handler,), {"folder": folder, **ways})
        server = serve.Server(("127.0.0.1", 0), handler)
        import threading

        threading.Thread(target=server.serve_forever, daemon=True).start()
        servers.append(server)
        return f"http://127.0.0.1:{server.server_port}/"

    yield begin
    for server in servers:
        server.shutdown()
        server.server_close()


def test_our_own_server_is_a_good_host(
    hosted: Callable[..., str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert host_check.main([hosted()]) == 0
    assert capsys.readouterr().out == "The host sends the handbook as it should.\n"


def test_a_changed_or_missing_file_is_named(hosted: Callable[..., str], folder: Path) -> None:
    (folder / "scripts" / "site.js").write_bytes(FILES["scripts/site.js"] + b"// added by a host")
    (folder / "index.html").unlink()
    found = list(host_check.findings(hosted()))
    assert any(line.startswith("scripts/site.js: it is not the file") for line in found)
    assert "index.html: the host says 404" in found


def test_a_policy_that_is_missing_or_too_wide_is_named(hosted: Callable[..., str]) -> None:
    for policy in (
        "",
        serve.CONTENT_POLICY.replace("script-src 'self'", "script-src 'self' 'unsafe-inline'"),
    ):
        found = "\n".join(host_check.findings(hosted(policy=policy)))
        assert "the content policy must say “script-src 'self' 'wasm-unsafe-eval'”" in found


def test_types_packing_and_lifetimes_are_looked_at(
    hosted: Callable[..., str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(serve, "SQUEEZED", set())
    monkeypatch.setattr(serve, "MEDIA_TYPES", {})
    monkeypatch.setattr(serve, "FOR_GOOD", "no-cache")
    monkeypatch.setattr(serve, "ASK_AGAIN", "max-age=600")
    monkeypatch.setattr(serve, "HEADERS", {})
    address = hosted()
    found = "\n".join(host_check.findings(address))
    assert "scripts/site.js: it is sent unpacked" in found
    assert "x.wasm: it never changes under its name" in found
    assert "index.html: it changes with an edition" in found


def test_a_host_that_cannot_be_asked_is_said_in_one_line(capsys: pytest.CaptureFixture[str]) -> None:
    assert host_check.main(["example"]) == 2
    assert capsys.readouterr().err == "example is no address; one begins with https://\n"
    assert host_check.main(["http://127.0.0.1:9/"]) == 2
    assert "does not answer" in capsys.readouterr().err
