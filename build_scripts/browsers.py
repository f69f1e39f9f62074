"""The oldest browsers in which the calculator runs: what is built for them, said to readers, and held by the tests.

Why these: the style sheet's :has() (Chromium 105, Firefox 121, Safari 15.4), unpacking in the browser (DecompressionStream:
Chromium 80, Firefox 113, Safari 16.4), workers that are modules (80, 114, 15), and what Python's interpreter asks of
WebAssembly. From memory; tests drive only the browsers of the day.
"""

from __future__ import annotations

import json
from pathlib import Path

_FILE = Path(__file__).with_name("browsers.json")


def oldest() -> dict[str, str]:
    """The oldest version of each engine by name: chromium, firefox, safari. esbuild reads the same file."""
    found: dict[str, str] = json.loads(_FILE.read_text(encoding="utf-8"))
    return found
