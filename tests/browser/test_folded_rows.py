"""Long parts on a phone fold to their names: added, opened, edited and taken out by keyboard and by tap.

Widths: 360 px is a common narrow phone; from 34rem of width on no part is folded (book.css).
"""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import BrowserContext, Locator, Page, expect

from calc.answering import answer, worksheet
from tests.browser.conftest import ANSWERED, KEEPS_NOTHING, Watch, example

NewContext = Callable[..., BrowserContext]
PHONE = {"viewport": {"width": 360, "height": 740}, "has_touch": True, "is_mobile": True}

# Worksheet, its rows, a box that a fold hides, what is typed into it, and the result that
# must follow.
SHEETS = [
    ("load-weight", "parts", "diameter", "1 ft 7 in", "weight"),
    ("load-path", "items", "rating", "1,234 lb", "capacity"),
]


@pytest.fixture
def before_scripts() -> str:
    """Keeping the book is asked in test_starting.py and test_editions.py."""
    return KEEPS_NOTHING


def opened(page: Page, served: str, sheet: str) -> Page:
    page.goto(served + example(sheet))
    expect(page.locator(ANSWERED)).to_be_attached()
    return page


def part(page: Page, number: int) -> Locator:
    return page.locator("[data-row]").nth(number)


def answered(page: Page, result: str) -> float:
    expect(page.locator(ANSWERED)).to_be_attached()
    return float(page.get_attribute(f'[data-result="{result}"]', "data-value") or "nan")


def same_as_here(page: Page, sheet: str, rows: str, changed: tuple[int, str, str], result: str) -> None:
    """The page shows what calc finds here for the example with one box changed."""
    number, name, typed = changed
    example = dict(worksheet(sheet).example)
    example[rows] = [dict(row) for row in example[rows]]
    example[rows][number][name] = typed
    wanted = answer(sheet, example, "us")["results"][result]["value"]
    page.wait_for_function(
        '([result, wanted]) => Math.abs(document.querySelector(`[data-result="${result}"]`).dataset.value - wanted)'
        " <= 1e-9 * Math.abs(wanted)",
        arg=[result, wanted],
    )
    assert answered(page, result) == pytest.approx(wanted, rel=1e-9)


@pytest.mark.parametrize(("sheet", "rows", "box", "typed", "result"), SHEETS)
def test_by_tap(
    sheet: str,
    rows: str,
    box: str,
    typed: str,
    result: str,
    new_context: NewContext,
    served: str,
    watch: Watch,
) -> None:
    page = opened(new_context(**PHONE).new_page(), served, sheet)
    before = page.locator("[data-row]").count()
    second = part(page, 1)
    hidden = second.locator(f'[name="{rows}[1].{box}"]')
    # Only the name of a folded part stands; the first part is open.
    expect(second.locator(f'[name="{rows}[1].label"]')).to_be_visible()
    expect(hidden).to_be_hidden()
    expect(part(page, 0).locator(f'[name="{rows}[0].condition"], [name="{rows}[0].shape"]')).to_be_visible()
    handle = second.locator(".row-fold > summary")
    size = handle.bounding_box()
    assert size is not None
    assert size["height"] >= 44
    expect(handle).to_contain_text("Open its boxes")
    handle.tap()
    expect(hidden).to_be_visible()
    expect(handle).to_contain_text("Fold its boxes")
    hidden.tap()
    hidden.fill(typed)
    same_as_here(page, sheet, rows, (1, box, typed), result)
    # Folded again it keeps what was typed.
    handle.tap()
    expect(hidden).to_be_hidden()
    assert hidden.input_value() == typed
    same_as_here(page, sheet, rows, (1, box, typed), result)
    # A part that is added stands open with its cursor in the name; taking it out leaves the answer as it was.
    kept = answered(page, result)
    page.locator("[data-add-row]").tap()
    expect(page.locator("[data-row]")).to_have_count(before + 1)
    added = part(page, before)
    expect(added.locator(".row-fold")).to_have_attribute("open", "")
    expect(added.locator(f'[name="{rows}[{before}].label"]')).to_be_focused()
    expect(
        added.locator(f'[name="{rows}[{before}].condition"], [name="{rows}[{before}].shape"]')
    ).to_be_visible()
    added.locator("[data-remove-row]").tap()
    expect(page.locator("[data-row]")).to_have_count(before)
    page.wait_for_function(
        '([result, kept]) => Number(document.querySelector(`[data-result="${result}"]`).dataset.value) === kept',
        arg=[result, kept],
    )
    assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0
    assert watch.errors == []


def tab_to(page: Page, target: Locator) -> None:
    """Press Tab until the target has the focus."""
    for _ in range(120):
        page.keyboard.press("Tab")
        if target.evaluate("element => element === document.activeElement"):
            return
    raise AssertionError(f"the keyboard never reached {target}")


@pytest.mark.parametrize(("sheet", "rows", "box", "typed", "result"), SHEETS)
def test_by_keyboard(
    sheet: str,
    rows: str,
    box: str,
    typed: str,
    result: str,
    new_context: NewContext,
    served: str,
    watch: Watch,
) -> None:
    page = opened(new_context(**PHONE).new_page(), served, sheet)
    before = page.locator("[data-row]").count()
    second = part(page, 1)
    hidden = second.locator(f'[name="{rows}[1].{box}"]')
    handle = second.locator(".row-fold > summary")
    # Boxes of a folded part are not on the keyboard's road: from its handle the next stop is its own button.
    page.locator(f'[name="{rows}[0].label"]').focus()
    tab_to(page, handle)
    page.keyboard.press("Tab")
    expect(second.locator(f'[name="{rows}[1].label"]')).to_be_focused()
    page.keyboard.press("Tab")
    expect(second.locator("[data-remove-row]")).to_be_focused()
    page.keyboard.press("Shift+Tab")
    page.keyboard.press("Shift+Tab")
    expect(handle).to_be_focused()
    page.keyboard.press("Enter")
    expect(hidden).to_be_visible()
    tab_to(page, hidden)
    page.keyboard.press("Control+A")
    page.keyboard.type(typed)
    same_as_here(page, sheet, rows, (1, box, typed), result)
    expect(hidden).to_be_focused()
    # Add a part and take it out again; the focus goes with it and never falls back to the top of the page.
    kept = answered(page, result)
    tab_to(page, page.locator("[data-add-row]"))
    page.keyboard.press("Enter")
    expect(page.locator("[data-row]")).to_have_count(before + 1)
    expect(page.locator(f'[name="{rows}[{before}].label"]')).to_be_focused()
    page.keyboard.type("spare")
    tab_to(page, part(page, before).locator("[data-remove-row]"))
    page.keyboard.press("Space")
    expect(page.locator("[data-row]")).to_have_count(before)
    expect(part(page, before - 1).locator("[data-remove-row]")).to_be_focused()
    page.wait_for_function(
        '([result, kept]) => Number(document.querySelector(`[data-result="${result}"]`).dataset.value) === kept',
        arg=[result, kept],
    )
    assert watch.errors == []


@pytest.mark.parametrize(("sheet", "rows", "box", "typed", "result"), SHEETS)
def test_a_refused_box_unfolds_its_part(
    sheet: str, rows: str, box: str, typed: str, result: str, new_context: NewContext, served: str
) -> None:
    page = opened(new_context(**PHONE).new_page(), served, sheet)
    second = part(page, 1)
    hidden = second.locator(f'[name="{rows}[1].{box}"]')
    second.locator(".row-fold > summary").tap()
    hidden.fill("-5 in" if box == "diameter" else "-5 lb")
    expect(page.locator('calc-sheet[data-answer-state="errors"]')).to_be_attached()
    second.locator(".row-fold > summary").tap()
    # What is wrong stays in sight although the fold is shut.
    expect(hidden).to_be_visible()
    expect(second.locator(f'[data-error="{rows}[1].{box}"]')).to_be_visible()
    hidden.fill(typed)
    same_as_here(page, sheet, rows, (1, box, typed), result)
    expect(hidden).to_be_hidden()


@pytest.mark.parametrize("sheet", ["load-weight", "load-path"])
def test_on_a_wide_screen_nothing_is_folded(sheet: str, new_context: NewContext, served: str) -> None:
    page = opened(new_context(viewport={"width": 1100, "height": 800}).new_page(), served, sheet)
    expect(part(page, 1).locator(".row-fold")).to_be_hidden()
    expect(part(page, 1).locator('[name$=".condition"], [name$=".shape"]')).to_be_visible()
