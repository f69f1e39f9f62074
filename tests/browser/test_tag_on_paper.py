"""A printed tag: at its size, on one page, and its code read back from the paper with the words that stand beside it."""

from __future__ import annotations

import datetime
import io
import math
from typing import Any

import pdfplumber
import pytest
import zxingcpp
from playwright.sync_api import Page, expect

from calc.records.qr_code import qr_code
from tests.browser.conftest import ANSWERED, KEEPS_NOTHING, own

DOTS_PER_INCH = 300
INCH_MM = 25.4
CODE_SHARE = 50.0 / 76.0
"""The code with its quiet zone over the height of the tag."""


@pytest.fixture
def before_scripts() -> str:
    """Keeping the book is asked in test_starting.py and test_editions.py."""
    return KEEPS_NOTHING


def printed(page: Page) -> Any:
    """The only page that is printed."""
    page.evaluate("document.fonts.ready")
    document = pdfplumber.open(io.BytesIO(page.pdf(prefer_css_page_size=True)))
    assert len(document.pages) == 1
    return document.pages[0]


def code_on(paper: Any) -> tuple[str, float]:
    """The text of the code on a printed page, and how long its side is [mm]."""
    (code,) = zxingcpp.read_barcodes(paper.to_image(resolution=DOTS_PER_INCH).original)
    left, right = code.position.top_left, code.position.top_right
    return code.text, math.dist((left.x, left.y), (right.x, right.y)) / DOTS_PER_INCH * INCH_MM


@pytest.mark.parametrize(
    ("size", "height_mm", "paper_in"),
    [("148x76", 76.0, None), ("6x3", 76.2, (6, 3)), ("4x2", 50.8, (4, 2))],
)
def test_a_tag_prints_at_its_size_with_a_code_that_is_read_back(
    size: str, height_mm: float, paper_in: tuple[int, int] | None, served: str, page: Page
) -> None:
    page.goto(served + own("tag").replace("size=148x76", f"size={size}"))
    expect(page.locator(f"{ANSWERED} svg.tag-{size}")).to_be_attached()
    paper = printed(page)
    if paper_in:
        assert (paper.width / 72, paper.height / 72) == pytest.approx(paper_in, abs=0.01)
    text, side_mm = code_on(paper)
    today = datetime.date.today()
    assert text.splitlines()[:4] == ["Inspected", "H-2", "Mark: 3/8 8 T", "Maker’s rating: 7,100 lb"]
    assert f"Inspected {today}" in text
    squares = len(qr_code(text))
    assert side_mm == pytest.approx(height_mm * CODE_SHARE * squares / (squares + 8), rel=0.01)
    said = paper.extract_text()
    for line in ("H-2", "7,100 lb", str(today)):
        assert line in said
    assert ("yard’s" in said or "Worked out" in said) == (paper_in is None)  # a label bears the tag alone


def test_a_part_that_failed_prints_do_not_use(served: str, page: Page) -> None:
    page.goto(served + own("tag").replace("finding=passed", "finding=failed"))
    expect(page.locator(f"{ANSWERED} .tag-stop")).to_be_attached()
    text, _ = code_on(printed(page))
    assert text.startswith("Do not use\nH-2\n")
    assert "7,100" not in text
