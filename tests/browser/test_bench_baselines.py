"""The baselines that the bench measures beside the site still answer under the content policy that the site is served with."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Page

from build_scripts.bench import make_stock
from tests.browser.conftest import serving


@pytest.mark.parametrize("baseline", ["stock", "pint"])
def test_the_runtime_as_published_answers(baseline: str, page: Page, tmp_path: Path) -> None:
    make_stock(tmp_path)
    with serving(tmp_path) as address:
        page.goto(f"{address}{baseline}.html")
        page.locator('html[data-stock="answered"]').wait_for(state="attached", timeout=90_000)
