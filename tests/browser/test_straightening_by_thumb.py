"""Jobs of the bench from an empty sheet to paper: a phone 390 px wide, by tap, with no network.

A bowed plate of half an inch, and a crate hauled up a slip. The numbers are worked by hand in tests/unit/test_straighten.py
and test_move_it.py.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

from playwright.sync_api import BrowserContext, Page, expect

from calc.answering import answer, worksheet
from tests.browser.conftest import ANSWERED
from tests.browser.test_hauling_by_thumb import KEPT, PHONE, fill_all, printed
from tests.unit.test_straighten import PLATE

JOBS: dict[str, tuple[dict[str, Any], tuple[str, ...]]] = {
    "straighten": (
        PLATE,
        ("3,600 lb", "5,400 lb", "9,360 lb", "10,000 lb", "16,700 lb", "Oregon", "Michigan", "past straight"),
    ),
    "move-it": (
        dict(worksheet("move-it").example),
        ("1,090 lb", "815 lb", "11.8°", "470 lb", "1,560 lb", "1,460 lb", "Keep a line on it"),
    ),
}
"""Each sheet with what is typed there, and what stands on its paper."""


def on_paper(page: Page, name: str, job: dict[str, Any], target: Path) -> str:
    """What stands on the paper of a sheet that was filled from empty."""
    expect(page.locator('calc-sheet[data-answer-state="empty"]')).to_be_attached()
    fill_all(page, job)
    expect(page.locator(ANSWERED)).to_be_attached()
    wanted = answer(name, job, "us")
    expect(page.locator("[data-headline]")).to_have_text(wanted["headline"])
    expect(page.locator("[data-error]:visible")).to_have_count(0)
    expect(page.locator("svg.drawing:visible").first).to_be_visible()
    assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["viewport"]["width"]
    return printed(page, target)


def test_jobs_from_an_empty_sheet_to_paper(
    new_context: Callable[..., BrowserContext], served: str, tmp_path: Path
) -> None:
    context = new_context(**PHONE)
    page = context.new_page()
    page.goto(served)
    expect(page.locator(KEPT)).to_be_attached()
    context.set_offline(True)
    for name, (job, shown) in JOBS.items():
        page.goto(f"{served}work-out/{name}.html")
        paper = on_paper(page, name, job, tmp_path / f"{name}.pdf")
        assert [one for one in shown if one not in paper] == [], name
        assert "EXAMPLE" not in paper.upper(), name
