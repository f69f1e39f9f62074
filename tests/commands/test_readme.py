"""What the README says of hosts and browsers is what the code does."""

from __future__ import annotations

from build_scripts import serve
from build_scripts.browsers import oldest
from build_scripts.build import ROOT

README = (ROOT / "README.md").read_text(encoding="utf-8")


def test_the_headers_are_those_of_our_own_server() -> None:
    assert f"    Content-Security-Policy: {serve.CONTENT_POLICY}\n" in README
    for name, value in serve.HEADERS.items():
        assert f"    {name}: {value}\n" in README
    assert f"`Cache-Control: {serve.FOR_GOOD}`" in README
    assert f"`Cache-Control: {serve.ASK_AGAIN}`" in README


def test_media_types_and_compression_are_those_of_our_own_server() -> None:
    for suffix in (
        ".html",
        ".js",
        ".mjs",
        ".css",
        ".wasm",
        ".json",
        ".webmanifest",
        ".svg",
        ".woff2",
        ".csv",
    ):
        assert f"`{suffix}`" in README
        assert serve.MEDIA_TYPES[suffix].split(";")[0] in README
    assert not {".png", ".woff2", ".bin"} & serve.SQUEEZED


def test_the_oldest_browsers_are_those_that_are_built_for() -> None:
    text = " ".join(README.split())
    known = oldest()
    wanted = f"Chromium browsers from version {known['chromium']}, Firefox from {known['firefox']}, Safari from {known['safari']}"
    assert wanted in text
