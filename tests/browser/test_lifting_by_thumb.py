"""Each lifting sheet as a phone in a shop opens it: from the disk folder, no network, 360 px wide, by tap and by keyboard."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from calc.answering import answer, declared
from tests.browser.conftest import ANSWERED, example, on_disk

# sheet -> the box to change, what is typed there by keyboard, and what by thumb
CHANGES = {
    "sling-legs": ("load", "7,130 lb", "4,870 lb"),
    "hanging-load": ("load", "1,730 lb", "1,190 lb"),
    "load-path": ("load", "3,310 lb", "5,230 lb"),
    "hitch": ("basket_angle", "47", "71"),
    "load-weight": ("parts[0].thickness", "7/16 in", "9/16 in"),
    "lifting-lug": ("thickness", "3/4 in", "7/8 in"),
    "beam-lift": ("span", "11 ft", "9 ft"),
    "lifting-frame": ("load", "700 lb", "500 lb"),
    "spreader": ("load", "1,300 lb", "1,100 lb"),
    "tripod": ("load", "500 lb", "430 lb"),
    "moving-load": ("load", "930 lb", "790 lb"),
}
PHONE = {"width": 360, "height": 780}


def test_every_lifting_sheet_is_here() -> None:
    lifting = {name for name, sheet in declared().items() if sheet.room == "lifting"}
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
    page.goto(on_disk(site, example(name)))
    expect(page.locator(ANSWERED)).to_be_attached()
    return page


@pytest.mark.parametrize("name", CHANGES)
def test_thumb_and_keyboard_change_a_number_and_bring_the_answer(
    name: str, new_context: Callable[..., BrowserContext], site: Path
) -> None:
    page = opened(new_context, site, name)
    box, by_keyboard, by_thumb = CHANGES[name]
    headline = page.locator("[data-headline]")
    for _ in range(60):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.getAttribute('name')") == box:
            break
    assert page.evaluate("getComputedStyle(document.activeElement).outlineStyle") == "solid"
    page.keyboard.press("Control+A")
    page.keyboard.type(by_keyboard)
    expect(headline).to_have_text(typed(name, box, by_keyboard))
    field = page.locator(f'[name="{box}"]')
    field.tap()
    field.fill(by_thumb)
    expect(headline).to_have_text(typed(name, box, by_thumb))
    assert page.evaluate("document.documentElement.scrollWidth") == PHONE["width"]
    bar = page.locator("[data-foot]").bounding_box()
    assert bar is not None, "the answer does not stay at the foot of the screen"
    assert bar["y"] + bar["height"] <= PHONE["height"] + 1
