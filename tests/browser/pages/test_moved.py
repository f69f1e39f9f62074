"""Old addresses: each leads to the page that took its place, and says so where the browser does not follow."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import BrowserContext, Page

from tests.browser.pages.kinds import moved


def test_each_old_address_leads_on(served: str, site: Path, page: Page) -> None:
    old = moved(site)
    assert "understand/anatomy-of-one-bead.html" in old
    for name in old:
        text = (site / name).read_text(encoding="utf-8")
        found = re.search(r'http-equiv="refresh" content="0; ?url=([^"]+)"', text)
        assert found is not None, name
        assert ((site / name).parent / found.group(1).partition("#")[0]).resolve().is_file(), name
        assert f'href="{found.group(1)}"' in text, f"{name} has the way on as a link too"
    page.goto(served + "understand/anatomy-of-one-bead.html")
    page.wait_for_url("**/understand/why-a-weld-voids-a-hook.html")


def test_from_disk(site: Path, new_context: Callable[..., BrowserContext]) -> None:
    page = new_context(java_script_enabled=False).new_page()
    page.goto((site / "understand" / "it-held-when-i-pulled-it.html").as_uri())
    page.wait_for_url("**/understand/what-a-pull-test-proves.html")
