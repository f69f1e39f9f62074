"""A bowed plate of half an inch from an empty sheet to paper: a phone 390 px wide, by tap, with no network.

The numbers are worked by hand in tests/unit/test_straighten.py.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import BrowserContext, expect

from calc.answering import answer
from tests.browser.conftest import ANSWERED
from tests.browser.test_hauling_by_thumb import KEPT, PHONE, fill_all, printed
from tests.unit.test_straighten import PLATE


def test_a_bowed_plate_from_an_empty_sheet_to_paper(
    new_context: Callable[..., BrowserContext], served: str, tmp_path: Path
) -> None:
    context = new_context(**PHONE)
    page = context.new_page()
    page.goto(served)
    expect(page.locator(KEPT)).to_be_attached()
    context.set_offline(True)
    page.goto(served + "work-out/straighten.html")
    expect(page.locator('calc-sheet[data-answer-state="empty"]')).to_be_attached()
    fill_all(page, PLATE)
    expect(page.locator(ANSWERED)).to_be_attached()
    wanted = answer("straighten", PLATE, "us")
    expect(page.locator("[data-headline]")).to_have_text(wanted["headline"])
    assert page.locator("[data-error]:visible").count() == 0
    assert page.locator("svg.drawing:visible").count() >= 1
    assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["viewport"]["width"]
    paper = printed(page, tmp_path / "straighten.pdf")
    shown = (
        "3,600 lb",
        "5,400 lb",
        "9,360 lb",
        "10,000 lb",
        "16,700 lb",
        "Oregon",
        "Michigan",
        "past straight",
    )
    assert [one for one in shown if one not in paper] == []
    assert "EXAMPLE" not in paper.upper()
