"""A printed page is worth pinning up: every column and every row's last cell is on the paper, none is cut."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.conftest import ANSWERED, KEEPS_NOTHING, example, own
from tests.browser.pages.kinds import pages

# Letter and A4, less the margins of the style sheet (12 mm, or 10 mm on the wide side), in CSS pixels of 1/96 in.
NARROWEST_UPRIGHT_PX = (210 - 24) / 25.4 * 96
NARROWEST_WIDE_PX = (279 - 20) / 25.4 * 96


@pytest.fixture
def before_scripts() -> str:
    """Keeping the book is asked in test_starting.py and test_editions.py."""
    return KEEPS_NOTHING


def _squeeze(text: str) -> str:
    return re.sub(r"\s+", "", text)


def test_every_table_prints_every_column(served: str, site: Path, page: Page, tmp_path: Path) -> None:
    missing: dict[str, list[str]] = {}
    for name in [p for p in pages(site) if p.startswith("look-up/") and p != "look-up/index.html"]:
        page.goto(served + name)
        wanted: list[str] = page.evaluate(
            """() => [...document.querySelectorAll('table.data')].flatMap((table) => [
                 ...[...table.querySelectorAll('thead th')].map((cell) => cell.innerText),
                 ...[...table.tBodies[0].rows].map((row) => row.cells[row.cells.length - 1].innerText),
               ])"""
        )
        page.pdf(path=tmp_path / "page.pdf", prefer_css_page_size=True)
        printed = subprocess.run(
            ["pdftotext", "-layout", str(tmp_path / "page.pdf"), "-"],
            check=True,
            capture_output=True,
            text=True,
        ).stdout
        # A cell that wraps is spread over lines, at a hyphen too (DOE-STD-1090-96), so its words are looked for one by one;
        # 1-3/8 prints as a set fraction.
        flat = _squeeze(printed).replace("-", "")
        lost = [text for text in wanted if any(word not in flat for word in re.split(r"[\s-]+", text))]
        if lost:
            missing[name] = lost[:5]
    assert missing == {}


def test_no_column_runs_off_the_paper(served: str, site: Path, page: Page) -> None:
    page.emulate_media(media="print")
    cut = {}
    for name in [p for p in pages(site) if p.startswith("look-up/")]:
        page.goto(served + name)
        wide = page.evaluate("document.querySelector('main').hasAttribute('data-wide')")
        paper = NARROWEST_WIDE_PX if wide else NARROWEST_UPRIGHT_PX
        page.set_viewport_size({"width": int(paper), "height": 900})
        right = page.evaluate(
            "Math.max(0, ...[...document.querySelectorAll('th, td')].map((c) => c.getBoundingClientRect().right))"
        )
        hidden = page.evaluate(
            "[...document.querySelectorAll('.table-frame')].filter((f) => getComputedStyle(f).overflow !== 'visible').length"
        )
        if right > paper + 1 or hidden:
            cut[name] = (round(right), round(paper), hidden)
    assert cut == {}


def test_a_printed_worksheet_has_all_it_needs(served: str, page: Page, tmp_path: Path) -> None:
    """Question, inputs with units, answer, drawing, working, cautions, sources, date and edition."""
    page.goto(served + own("sling-legs"))
    expect(page.locator(ANSWERED)).to_be_attached()
    page.evaluate("document.fonts.ready")  # words in a stand-in face would take other room
    page.pdf(path=tmp_path / "sheet.pdf", prefer_css_page_size=True)
    printed = subprocess.run(
        ["pdftotext", "-layout", str(tmp_path / "sheet.pdf"), "-"], check=True, capture_output=True, text=True
    ).stdout
    flat = _squeeze(printed)
    big = page.inner_text(".answer [data-big]")
    edition = page.inner_text("[data-edition]").split()
    for wanted in (
        page.inner_text("article h1"), "4,860lb", big, "Withintherating", "Theworking", "Sling-anglefactor", "Youmust",
        "Whatitrestson", "GuidanceonSafeSlingUse", "Edition", *edition, "Printed",
    ):  # fmt: skip
        assert _squeeze(wanted) in flat, wanted
    assert re.search(r"\d{4}-\d{2}-\d{2}", printed)
    assert printed.count("\f") == 1  # one page


@pytest.mark.parametrize("name", ["hook-check", "chain-check", "shackle-check", "sling-check"])
def test_an_inspection_prints_as_a_record_of_one_page(
    name: str, served: str, page: Page, tmp_path: Path
) -> None:
    """What was read, the verdict, every criterion with its source, when next, who signs; never the example's as a record."""

    def printed() -> str:
        page.evaluate("document.fonts.ready")
        page.pdf(path=tmp_path / "record.pdf", prefer_css_page_size=True)
        command = ["pdftotext", "-layout", str(tmp_path / "record.pdf"), "-"]
        return subprocess.run(command, check=True, capture_output=True, text=True).stdout

    page.goto(served + example(name))
    expect(page.locator(ANSWERED)).to_be_attached()
    assert "no record of any part" in printed()
    page.goto("about:blank")
    page.goto(served + own(name))
    page.fill('[name="inspected_on"]', "2026-02-28")
    expect(
        page.locator('calc-sheet[data-answer-for="reader"][data-answer-state="answered"]')
    ).to_be_attached()
    record = printed()
    assert record.count("\f") == 1
    assert "no record of any part" not in record
    for line in (
        "Inspected by",
        "Signature",
        "Part, serial or tag number",
        "Next full inspection",
        "2026-02-28",
    ):
        assert line in record, line
    rows = page.locator("[data-result=criteria] > tr")
    assert rows.count() > 3
    flat = _squeeze(record)
    for cell in page.locator("[data-result=criteria] > tr > *").all_inner_texts():
        assert all(word in flat for word in cell.split()), cell
