"""Each lifting sheet as a phone in a shop opens it: from the disk folder, no network, 360 px wide, by tap and by keyboard."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from calc.answering import answer, declared
from tests.browser.conftest import ANSWERED

# sheet -> the box to change, and what is typed there
CHANGES = {
    "sling-legs": ("load", "7,130 lb"),
    "hanging-load": ("load", "1,730 lb"),
    "load-path": ("load", "3,310 lb"),
    "hitch": ("basket_angle", "47"),
    "load-weight": ("parts[0].thickness", "7/16 in"),
    "lifting-lug": ("thickness", "3/4 in"),
    "beam-lift": ("span", "11 ft"),
}
PHONE = {"width": 360, "height": 780}


def test_every_lifting_sheet_is_here() -> None:
    lifting = {
        name for name, sheet in declared().items() if sheet.compute.__module__.startswith("calc.lifting.")
    }
    assert lifting == set(CHANGES)


def typed(name: str, box: str, text: str) -> str:
    """The headline that Python gives here for the example with one box changed."""
    raw = {
        key: list(value) if isinstance(value, tuple) else value
        for key, value in declared()[name].example.items()
    }
    if "[" in box:
        row, column = box.split("].")
        rows = [dict(part) for part in raw[row.split("[")[0]]]
        rows[int(row.split("[")[1])][column] = text
        raw[row.split("[")[0]] = rows
    else:
        raw[box] = text
    return str(answer(name, raw, "us")["headline"])


def opened(new_context: Callable[..., BrowserContext], site: Path, name: str) -> Page:
    """The sheet opened from disk on a phone, answered."""
    page = new_context(offline=True, viewport=PHONE, has_touch=True, is_mobile=True).new_page()
    page.goto((site / "work-out" / f"{name}.html").as_uri())
    expect(page.locator(ANSWERED)).to_be_attached()
    return page


@pytest.mark.parametrize("name", CHANGES)
def test_a_thumb_changes_a_number_and_reads_the_answer(
    name: str, new_context: Callable[..., BrowserContext], site: Path
) -> None:
    page = opened(new_context, site, name)
    box, text = CHANGES[name]
    field = page.locator(f'[name="{box}"]')
    field.tap()
    field.fill(text)
    expect(page.locator("[data-headline]")).to_have_text(typed(name, box, text))
    assert page.evaluate("document.documentElement.scrollWidth") == PHONE["width"]
    bar = page.locator("[data-foot]").bounding_box()
    assert bar is not None, "the answer does not stay at the foot of the screen"
    assert bar["y"] + bar["height"] <= PHONE["height"] + 1


@pytest.mark.parametrize("name", CHANGES)
def test_the_keyboard_alone_reaches_the_box_and_the_answer(
    name: str, new_context: Callable[..., BrowserContext], site: Path
) -> None:
    page = opened(new_context, site, name)
    box, text = CHANGES[name]
    for _ in range(60):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.getAttribute('name')") == box:
            break
    assert page.evaluate("getComputedStyle(document.activeElement).outlineStyle") == "solid"
    page.keyboard.press("Control+A")
    page.keyboard.type(text)
    expect(page.locator("[data-headline]")).to_have_text(typed(name, box, text))
