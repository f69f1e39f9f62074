"""Writes into each page the checksums of the scripts that it loads, once those scripts are made.

A page names a script's checksum as `sum:scripts/site.js`; early.js gives it to the browser with the script's address, and
the browser refuses a script that differs. So page and scripts are of one build, and one changed byte is a fault.
"""

from __future__ import annotations

import base64
import functools
import hashlib
import re
from pathlib import Path


def integrity(data: bytes) -> str:
    """A checksum as browsers write it."""
    return "sha256-" + base64.b64encode(hashlib.sha256(data).digest()).decode()


def seal(site: Path) -> int:
    """Put the checksums into every page of a built site; gives back how many pages."""

    @functools.cache
    def sum_of(name: str) -> str:
        return integrity((site / name).read_bytes())

    pages = list(site.rglob("*.html"))
    for page in pages:
        text = page.read_text(encoding="utf-8")
        page.write_text(
            re.sub(r"sum:([\w./-]+)", lambda named: sum_of(named.group(1)), text), encoding="utf-8"
        )
    return len(pages)
