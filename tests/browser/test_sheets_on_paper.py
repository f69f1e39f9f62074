"""Numbers that come back from paper, and one page for a whole job: from the boxes to the printed sheet and back."""

from __future__ import annotations

import io
from typing import Any
from urllib.parse import urlencode

import pdfplumber
import pytest
import zxingcpp
from playwright.sync_api import Page, expect

from calc.records.codes.numbers import bring_back, fields
from tests.browser.conftest import ANSWERED, KEEPS_NOTHING
from tests.unit.test_jobs import LEGS, LIFT

DOTS_PER_INCH = 300
BACK_PAGE = "about/numbers-from-paper.html"
JOB_PAGE = "about/one-page-for-the-job.html"


@pytest.fixture
def before_scripts() -> str:
    """Keeping the book is asked in test_starting.py and test_editions.py."""
    return KEEPS_NOTHING


def filled(name: str, inputs: Any) -> str:
    """The address of a worksheet with inputs of the reader's own."""
    return f"work-out/{name}.html#{urlencode([*fields(inputs), ('units', 'us')])}"


def printed(page: Page, paper: str) -> Any:
    """The pages of the printed page."""
    page.evaluate("document.fonts.ready")
    return pdfplumber.open(io.BytesIO(page.pdf(format=paper, print_background=True))).pages


def text_of_code(paper: Any) -> str:
    """The text of the one code on a printed page."""
    (code,) = zxingcpp.read_barcodes(paper.to_image(resolution=DOTS_PER_INCH).original)
    return code.text


def fill_lift(page: Page, served: str, lift: dict[str, Any]) -> None:
    """Type the worksheets of a lift, one after another in one window."""
    for name, inputs in lift.items():
        page.goto(served + filled(name, inputs))
        expect(page.locator(ANSWERED)).to_be_attached()


def test_a_printed_answer_comes_back_from_its_code(served: str, page: Page) -> None:
    page.goto(served + filled("sling-legs", LEGS))
    expect(page.locator("[data-code-text]")).to_be_attached()
    answer = page.inner_text(".answer [data-big]")
    (paper,) = printed(page, "Letter")
    text = text_of_code(paper)
    assert bring_back(text).sheets[0].inputs == LEGS
    assert "".join(page.locator("[data-code-text]").inner_text().split()) == text
    page.fill('[name="load"]', "")
    expect(page.locator(".code-place")).to_be_hidden()

    page.goto(served + BACK_PAGE)
    box, said = page.locator("#back-text"), page.locator("[data-back-said]")
    box.fill(text[:-7] + text[-6:])
    page.locator("[data-back] button").click()
    expect(said).to_contain_text("Nothing was opened")
    box.fill(text.lower())
    page.locator("[data-back] button").click()
    expect(page.locator(f"{ANSWERED} [data-carried]")).to_contain_text("printed sheet")
    expect(page.locator(".answer [data-big]")).to_have_text(answer)
    assert page.input_value('[name="load"]') == LEGS["load"]


def test_a_lift_prints_on_one_page_and_comes_back(served: str, page: Page) -> None:
    fill_lift(page, served, LIFT)
    page.goto(served + f"{JOB_PAGE}#lift")
    expect(page.locator('[data-job][data-verdict="caution"]')).to_be_visible()
    for paper in ("Letter", "A4"):
        (sheet,) = printed(page, paper)
        said = sheet.extract_text()
        for wanted in (
            "Lift sheet",
            "Before the hook goes up",
            "S-5",
            "Checked by",
            "permission to lift",
            "Edition",
        ):
            assert wanted in said, wanted
        right = max(word["x1"] for word in sheet.extract_words())
        assert right < sheet.width - 20  # nothing runs into the margin
    text = text_of_code(sheet)
    page.goto("about:blank")
    page.evaluate("0")
    page.goto(served + BACK_PAGE)
    page.evaluate("sessionStorage.clear()")
    page.fill("#back-text", text)
    page.locator("[data-back] button").click()
    expect(page.locator('[data-job][data-verdict="caution"]')).to_be_visible()
    expect(page).to_have_url(f"{served}{JOB_PAGE}#lift")


@pytest.mark.parametrize("load", ["1,500 lb", "keel"])
def test_a_lift_that_does_not_agree_prints_no_plan(load: str, served: str, page: Page) -> None:
    page.goto(served + filled("load-weight", LIFT["load-weight"]))
    expect(page.locator(ANSWERED)).to_be_attached()
    page.goto(served + filled("sling-legs", {**LEGS, "load": load}))
    expect(
        page.locator('calc-sheet[data-answer-state="answered"], calc-sheet[data-answer-state="errors"]')
    ).to_be_attached()
    page.goto(served + f"{JOB_PAGE}#lift")
    expect(page.locator("[data-job-reasons]")).to_be_visible()
    (sheet,) = printed(page, "Letter")
    said = sheet.extract_text()
    assert "Not a plan" in said
    assert "May carry here" not in said


def test_twenty_parts_go_on_to_a_second_sheet_with_the_head_again(served: str, page: Page) -> None:
    hoist, shackle = LIFT["load-path"]["items"]
    items = [{**hoist, "label": f"block {place}"} for place in range(19)]
    lift = {**LIFT, "load-path": {**LIFT["load-path"], "items": [*items, shackle]}}
    fill_lift(page, served, {name: {**inputs, "job": "Engine 4"} for name, inputs in lift.items()})
    page.goto(served + f"{JOB_PAGE}#lift")
    expect(page.locator('[data-job][data-verdict="caution"]')).to_be_visible()
    for paper in ("Letter", "A4"):
        sheets = printed(page, paper)
        said = [" ".join(sheet.extract_text().split()) for sheet in sheets]
        assert len(said) == 2
        for number, one in enumerate(said, 1):
            assert "Lift sheet Engine 4" in one
            assert f"Page {number} of 2." in one
        assert "Checked by" in said[0]
        assert all(f"block {place} Hoist" in said[1] for place in range(19))
    assert bring_back(text_of_code(sheets[1])).sheets[2].inputs["items"][18]["label"] == "block 18"
