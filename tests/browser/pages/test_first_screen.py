"""What stands on the first screen of a phone (390 x 844 CSS pixels): the boxes of a worksheet, under one slim head."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page

from calc.answering import declared_names
from tests.browser.conftest import PYTHON_NEVER_STARTS, on_disk

NewContext = Callable[..., BrowserContext]

PHONE = {"width": 390, "height": 844}
HEAD_PX = 56
FIRST_BOX_PX = 300
"""Where the first thing to fill in begins, at the latest."""
BOXES = "calc-sheet .field :is(input, select, textarea), calc-sheet .choices label, calc-sheet [data-add-row]"


@pytest.fixture
def phone(new_context: NewContext) -> Page:
    """A page as wide as a phone, on which Python never starts."""
    context = new_context(viewport=PHONE)
    context.add_init_script(PYTHON_NEVER_STARTS)
    return context.new_page()


def test_the_first_box_of_every_worksheet_is_on_the_first_screen(site: Path, phone: Page) -> None:
    late = {}
    for name in declared_names():
        phone.goto(on_disk(site, f"work-out/{name}.html"))
        phone.evaluate("document.fonts.ready")
        top = phone.evaluate(
            """(boxes) => Math.min(...[...document.querySelectorAll(boxes)]
                 .filter((box) => box.getClientRects().length && !box.closest('.unit-switch'))
                 .map((box) => box.getBoundingClientRect().top + scrollY))""",
            BOXES,
        )
        if top > FIRST_BOX_PX:
            late[name] = top
    assert late == {}


def test_the_head_is_one_slim_line_with_mark_search_and_menu(site: Path, phone: Page) -> None:
    phone.goto(on_disk(site, "look-up/index.html"))
    assert phone.locator(".head").evaluate("(head) => head.getBoundingClientRect().height") <= HEAD_PX
    tops = phone.locator(".wordmark, .find-box, .menu > summary").evaluate_all(
        "(all) => all.map((one) => Math.round(one.getBoundingClientRect().top + one.getBoundingClientRect().height / 2))"
    )
    assert len(tops) == 3
    assert max(tops) - min(tops) <= 2


def test_the_menu_leads_to_every_part_and_shuts(site: Path, phone: Page) -> None:
    phone.goto(on_disk(site, "look-up/index.html"))
    phone.click(".menu > summary")
    parts = phone.locator(".menu-parts a")
    assert parts.count() >= 6
    assert parts.first.is_visible()
    small = parts.evaluate_all("(all) => all.filter((one) => one.getBoundingClientRect().height < 44).length")
    assert small == 0
    phone.keyboard.press("Escape")
    assert not parts.first.is_visible()


@pytest.mark.parametrize(
    ("locale", "units", "place"),
    [
        ("en-US", "us", "us-federal"),
        ("en-GB", "si", "gb"),
        ("de-DE", "si", "eu"),
        ("en-CA", "si", "ca"),
        ("en-AU", "si", "au"),
    ],
)
def test_the_browsers_language_says_units_and_place_until_the_reader_does(
    site: Path, new_context: NewContext, locale: str, units: str, place: str
) -> None:
    page = new_context(viewport=PHONE, locale=locale).new_page()
    page.goto(on_disk(site, "look-up/index.html"))
    assert page.evaluate("document.documentElement.dataset.units") == units
    assert page.evaluate("document.documentElement.dataset.place") == place
    page.click(".menu > summary")
    other = "si" if units == "us" else "us"
    page.click(f".menu [data-choose-units={other}]")
    page.select_option("[data-choose-place]", "us-state")
    page.goto(on_disk(site, "work-out/sling-legs.html"))
    assert page.evaluate("document.documentElement.dataset.units") == other
    assert page.evaluate("document.documentElement.dataset.place") == "us-state"
