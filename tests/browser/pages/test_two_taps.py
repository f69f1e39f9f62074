"""On a phone, two taps on the home page lead to an answer: a look-up page and a page that explains, tapped as a reader taps."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import BrowserContext, expect

from tests.pages.test_two_taps import QUESTIONS, Asked

NewContext = Callable[..., BrowserContext]
PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
TAPPED = ("How many clips on a 1/2 in rope?", "May I straighten it?")


@pytest.mark.parametrize("one", [one for one in QUESTIONS if one.text in TAPPED], ids=lambda one: one.task)
def test_two_taps_on_a_phone(served: str, new_context: NewContext, one: Asked) -> None:
    page = new_context(**PHONE).new_page()
    page.goto(served + "index.html")
    page.locator("details.task summary", has_text=one.task).tap()
    line = page.locator("details.task[open] a", has_text=one.line).first
    expect(line).to_be_visible()
    line.tap()
    expect(page.locator("main h1").first).to_be_in_viewport()
    expect(page.locator("main", has_text=one.answer[-1]).first).to_be_visible()
