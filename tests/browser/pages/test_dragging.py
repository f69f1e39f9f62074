"""A drawing that is dragged: by finger, by keyboard, after a turn of pages, and still a drawing where scripts are off."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from playwright.sync_api import BrowserContext, Page, expect

PAGE = "understand/why-angle-multiplies-pull.html"
SAID = "[data-drag] output"
HANDLE = '[data-drag] [data-part="handle"]'


def test_by_keyboard(served: str, page: Page) -> None:
    page.goto(served + PAGE)
    expect(page.locator(SAID)).to_contain_text("At 45° each leg pulls 1,420 lb")
    legs = page.locator('[data-drag] [data-part="left"]').get_attribute("d")
    box = page.get_by_label("Drag the hook up and down, or move this")
    box.focus()
    box.press("Home")
    expect(page.locator(SAID)).to_contain_text("do not lift")
    box.press("End")
    expect(page.locator(SAID)).to_contain_text("At 70°")
    assert page.locator('[data-drag] [data-part="left"]').get_attribute("d") != legs
    assert box.get_attribute("aria-valuetext") == page.locator(SAID).inner_text()


def test_by_hand(served: str, page: Page) -> None:
    page.goto(served + PAGE)
    page.locator(HANDLE).scroll_into_view_if_needed()
    held = page.locator(HANDLE).bounding_box()
    assert held is not None
    assert min(held["width"], held["height"]) >= 40
    x, y = held["x"] + held["width"] / 2, held["y"] + held["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y - 60, steps=6)
    page.mouse.up()
    said = re.search(r"At (\d+)°", page.locator(SAID).inner_text())
    assert said is not None
    assert 45 < int(said.group(1)) <= 70
    moved = page.locator(HANDLE).bounding_box()
    assert moved is not None
    assert abs(moved["y"] - (held["y"] - 60)) < 12
    page.mouse.move(x, y + 40)
    assert page.locator(HANDLE).bounding_box() == moved, "let go, it stays"


def test_after_a_turn_of_pages_from_disk(site: Path, page: Page) -> None:
    page.goto((site / "understand" / "index.html").as_uri())
    page.locator('a[href="why-angle-multiplies-pull.html"]').click()
    expect(page.locator("[data-drag-ready]")).to_be_visible()
    expect(page.locator(".drag-row")).to_be_visible()


def test_without_scripts_it_is_a_drawing_with_its_sentence(
    served: str, new_context: Callable[..., BrowserContext]
) -> None:
    page = new_context(java_script_enabled=False).new_page()
    page.goto(served + PAGE)
    expect(page.locator("[data-drag] svg")).to_be_visible()
    expect(page.locator(SAID)).to_contain_text("At 45°")
    expect(page.locator(".drag-row")).to_be_hidden()
    expect(page.locator(HANDLE)).to_be_hidden()
