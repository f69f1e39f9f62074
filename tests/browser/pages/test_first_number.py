"""A look-up page on a phone (390 x 844 CSS pixels): the lists that sift, and the first row or number of its first table,
are on the first screen, under head and title alone."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from build_scripts.look_up_pages import look_up_pages
from tests.browser.conftest import on_disk

NewContext = Callable[..., BrowserContext]

PHONE = {"width": 390, "height": 844}
FIRST_NUMBER_PX = 260
"""Where the first number ends, at the latest; of a table of words, where its first row begins."""
MEASURED = """() => {
  const seen = (one) => one.getClientRects().length > 0;
  const table = [...document.querySelectorAll('table.data')].find(seen);
  const figures = [...table.querySelectorAll('tbody td .us-leads, tbody td:not(:has(.us-leads))')];
  const figure = figures.find((one) => seen(one) && /\\d/.test(one.textContent) && !one.matches('.words *, .words'));
  const row = table.querySelector('tbody tr').getBoundingClientRect().top + scrollY;
  if (!figure || figure.closest('.words')) return row;
  const range = document.createRange();
  range.selectNodeContents(figure);
  return range.getClientRects()[0].bottom + scrollY;
}"""


@pytest.fixture
def phone(new_context: NewContext) -> Page:
    """A page as wide as a phone."""
    return new_context(viewport=PHONE).new_page()


def test_the_first_number_of_every_look_up_page_is_on_the_first_screen(site: Path, phone: Page) -> None:
    late = {}
    for one in look_up_pages():
        phone.goto(on_disk(site, f"look-up/{one.name}.html"))
        phone.evaluate("document.fonts.ready")
        bottom = phone.evaluate(MEASURED)
        lists = phone.locator(".look").first.locator("select[data-sift]")
        top = lists.first.evaluate("(list) => list.getBoundingClientRect().top") if lists.count() else 0
        if bottom > FIRST_NUMBER_PX or (one.tables and 844 > top > FIRST_NUMBER_PX):
            late[one.name] = (bottom, top)
        assert phone.evaluate("document.documentElement.scrollWidth") <= PHONE["width"], one.name
    assert late == {}


def test_pounds_or_kilograms_stand_first_as_the_reader_chose(site: Path, phone: Page) -> None:
    """49 CFR 393.108: grade 70, 3/8 in: 6,600 lb, 2,990 kg; OSHA's tables print grade 80, 3/8 in, as 7,100 lb alone."""
    first = """(cell) => [...cell.querySelectorAll('.printed, .made')]
      .sort((a, b) => a.getBoundingClientRect().top - b.getBoundingClientRect().top)[0].textContent"""
    for units, tied, lifted in (("us", "6,600 lb", "7,100 lb"), ("si", "2,990 kg", "≈ 3,220 kg")):
        phone.goto(on_disk(site, "look-up/chain-tie-down.html"))
        phone.click(".menu > summary")
        phone.click(f".menu [data-choose-units={units}]")
        cell = phone.locator("table.data").first.locator("tbody tr", has_text="3/8").locator("td").first
        assert cell.evaluate(first) == tied
        phone.goto(on_disk(site, "look-up/chain-lifting.html"))
        cell = phone.locator("table.data").first.locator("tbody tr", has_text="3/8").locator("td").first
        assert cell.evaluate(first) == lifted


def test_the_last_size_holds_on_the_next_page_and_can_be_given_up(site: Path, phone: Page) -> None:
    phone.goto(on_disk(site, "look-up/chain-tie-down.html"))
    phone.locator("[data-sift=size_in]").first.select_option("3/8")
    phone.goto(on_disk(site, "look-up/shackles.html"))
    look = phone.locator("[data-table=shackles]")
    expect(look.locator("[data-sift=size_in]")).to_have_value("3/8")
    assert look.locator("table.data tbody tr:visible").count() == 1
    look.locator("[data-sift-all]").click()
    assert look.locator("table.data tbody tr:visible").count() > 5
    phone.reload()
    assert look.locator("table.data tbody tr:visible").count() > 5


def test_a_cell_in_the_address_is_shown_though_another_size_was_last(site: Path, phone: Page) -> None:
    phone.goto(on_disk(site, "look-up/chain-tie-down.html"))
    phone.locator("[data-sift=size_in]").first.select_option("1/4")
    cell = phone.locator("table.data").first.locator("tbody tr", has_text="5/8").locator("td[id]").first
    name = cell.get_attribute("id")
    phone.goto("about:blank")
    phone.goto(on_disk(site, f"look-up/chain-tie-down.html#{name}"))
    expect(phone.locator(f"td#{name}")).to_be_visible()
    expect(phone.locator("[data-table=chain-tie-down] [data-pin]")).to_be_visible()


def test_the_rule_of_the_readers_place_stands_first(site: Path, new_context: NewContext) -> None:
    leading = {}
    for locale in ("en-US", "en-CA"):
        page = new_context(viewport=PHONE, locale=locale).new_page()
        page.goto(on_disk(site, "look-up/hooks.html"))
        leading[locale] = page.locator("[data-table=hook-limits] tbody tr .from").first.inner_text()
    assert leading["en-US"].startswith("OSHA")
    assert leading["en-CA"].startswith(("Alberta", "Canada", "Ontario"))


def test_an_old_address_leads_to_the_table_and_to_its_cell(site: Path, phone: Page) -> None:
    phone.goto(on_disk(site, "look-up/shackle-limits.html"))
    phone.wait_for_url("**/look-up/shackles.html#of-shackle-limits")
    phone.goto(on_disk(site, "look-up/shackle-limits.html#c-1"))
    phone.wait_for_url("**/look-up/shackles.html#shackle-limits-c-1")
    expect(phone.locator("[data-table=shackle-limits] [data-pin]")).to_be_visible()
    phone.goto(on_disk(site, "look-up/pipe-weights.html"))
    phone.wait_for_url("**/look-up/steel-weights.html")


def test_an_old_address_leads_on_without_scripts(served: str, new_context: NewContext) -> None:
    page = new_context(java_script_enabled=False).new_page()
    page.goto(served + "look-up/wire-rope-limits.html")
    page.wait_for_url("**/look-up/wire-rope.html#of-wire-rope-limits")
