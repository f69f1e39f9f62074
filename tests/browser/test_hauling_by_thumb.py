"""Two jobs of the yard from an empty sheet to a printed load sheet: a phone 390 px wide, by tap, with no network.

A 9,000 lb loader on four grade 70 chains, and a gearbox of 1.2 t under straps on a truck in Germany. The numbers are
worked by hand in tests/unit/test_tie_down.py.
"""

from __future__ import annotations

import subprocess
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from calc.answering import answer, worksheet
from tests.browser.conftest import ANSWERED

SHEET = "work-out/tie-down.html"
PHONE: dict[str, Any] = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
KEPT = 'html[data-offline="kept"]'
LEAST_TARGET_PX = 44.0

LOADER: dict[str, Any] = dict(worksheet("tie-down").example)
GEARBOX: dict[str, Any] = {
    "country": "europe", "commodity": "general", "load": "1.2 t", "length": "1.2 m", "width": "0.8 m", "height": "1 m",
    "centre_height": "0.45 m", "edge_along": "0.6 m", "edge_across": "0.4 m", "deck": "swept-dry",
    "pair": "sawn-wood-on-plywood", "blocked": "no", "edges": "protected", "anchor_limit": "2000 daN", "anchor_label": "lc",
    "tie_downs": [
        {"role": "over-top", "kind": "web", "condition": "marked-good", "label": "lc", "limit": "2500 daN",
         "tension": "350 daN", "count": "4", "across": "10 cm", "down": "100 cm"},
    ],
}  # fmt: skip
JOBS = {"loader": LOADER, "gearbox": GEARBOX}


def fill(page: Page, path: str, value: str) -> None:
    """Give one box its value as a thumb does: a tap on the choice, or a tap into the box and the keys."""
    box = page.locator(f'[name="{path}"]')
    if box.first.get_attribute("type") == "radio":
        choice = page.locator(f'label:has([name="{path}"][value="{value}"])')
        choice.scroll_into_view_if_needed()
        size = choice.bounding_box()
        assert size is not None
        assert size["height"] >= LEAST_TARGET_PX, path
        choice.tap()
        return
    box.scroll_into_view_if_needed()
    assert box.is_visible(), f"{path} is not asked"
    if box.evaluate("box => box.tagName") == "SELECT":
        box.select_option(value)
    else:
        box.tap()
        box.fill(value)


def fill_all(page: Page, job: dict[str, Any]) -> None:
    """Every box from top to bottom; a row more where the job has one more."""
    for name, value in job.items():
        if not isinstance(value, list):
            fill(page, name, str(value))
            continue
        for number, row in enumerate(value):
            if number:
                page.locator("[data-add-row]").tap()
            for column, cell in row.items():
                fill(page, f"{name}[{number}].{column}", str(cell))


def printed(page: Page, target: Path) -> str:
    """What stands on paper."""
    page.pdf(path=target, prefer_css_page_size=True)
    command = ["pdftotext", "-layout", str(target), "-"]
    return " ".join(subprocess.run(command, check=True, capture_output=True, text=True).stdout.split())


@pytest.mark.parametrize("name", JOBS)
def test_from_an_empty_sheet_to_a_printed_load_sheet_without_network(
    name: str, new_context: Callable[..., BrowserContext], served: str, tmp_path: Path
) -> None:
    job = JOBS[name]
    context = new_context(**PHONE)
    page = context.new_page()
    page.goto(served)
    expect(page.locator(KEPT)).to_be_attached()
    context.set_offline(True)
    page.goto(served + SHEET)
    expect(page.locator('calc-sheet[data-answer-state="empty"]')).to_be_attached()
    if job["country"] == "europe":
        page.check('[name="units"][value="si"]', force=True)
    fill_all(page, job)
    expect(page.locator(ANSWERED)).to_be_attached()
    wanted = answer("tie-down", job, "si" if job["country"] == "europe" else "us")
    expect(page.locator("[data-headline]")).to_have_text(wanted["headline"])
    assert wanted["verdict"] == "ok"
    assert page.locator("[data-error]:visible").count() == 0
    assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["viewport"]["width"]
    paper = printed(page, tmp_path / "load-sheet.pdf")
    shown = (
        str(job["load"]).split()[0],
        "By the law’s count: within",
        "By the forces: within",
        "Each movement",
        "From above",
    )
    assert [one for one in shown if one not in paper] == []
    assert [one for one in wanted["results"]["directions"]["items"] if one.split(":")[0] not in paper] == []
    assert "EXAMPLE" not in paper.upper()
