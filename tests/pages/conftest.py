"""The built site for tests that read its files. Built only when a source is newer than what stands there."""

from __future__ import annotations

from pathlib import Path

import pytest

from build_scripts import serve
from build_scripts.build import SITE, build


@pytest.fixture(scope="session")
def site() -> Path:
    """The built site."""
    home = SITE / "index.html"
    if not home.is_file() or home.stat().st_mtime_ns < max(serve._stamp().values()):
        build(say=lambda line: None)
    return SITE
