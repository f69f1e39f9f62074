"""WCAG 2.2 AA by axe-core (npm, 4.14) with its target-size rule switched on, on every page, light and dark, at 320 px
(the width that WCAG 2.2 success criterion 1.4.10 names for reflow) and 1280 px."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from calc.answering import declared_names
from tests.browser.conftest import ANSWERED, PYTHON_NEVER_STARTS
from tests.browser.pages.kinds import KINDS, pages

AXE = Path(__file__).resolve().parents[3] / "node_modules" / "axe-core" / "axe.min.js"
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]

SHEETS = {f"work-out/{name}.html" for name in declared_names()}

NewContext = Callable[..., BrowserContext]


def violations(page: Page) -> list[str]:
    """What axe finds wrong on the page as it stands: rule, and the first elements."""
    if not page.evaluate("typeof axe === 'object'"):
        page.evaluate(AXE.read_text(encoding="utf-8"))
    # At the foot of a worksheet the bar of the answer rests in its own place and lies over no other target.
    page.evaluate("document.querySelector('.foot-bar') && scrollTo(0, document.body.scrollHeight)")
    found: list[dict[str, Any]] = page.evaluate(
        "(tags) => axe.run(document, {resultTypes: ['violations'], runOnly: {type: 'tag', values: tags},"
        " rules: {'target-size': {enabled: true}}}).then((result) => result.violations)",
        RULES,
    )
    return [f"{one['id']}: {[node['target'] for node in one['nodes']][:4]}" for one in found]


LIKE_ROWS = 12
"""Of a long table or list, so many rows are looked at on every page: its rows are made by one template. The kinds of pages keep
all of theirs once."""
WHOLE = ("light", 320)
"""The scheme and the width [CSS px] in which they do."""
CUT_LONG_TABLES = """(kept) => document.querySelectorAll("tbody, ul.every").forEach((body) => {
  const rows = [...body.children];
  if (rows.length > kept) for (const row of rows.slice(kept / 2, -kept / 2)) row.remove();
})"""


def still(new_context: NewContext, **options: Any) -> BrowserContext:
    """A context whose pages stand still: Python never starts, and the book is not kept meanwhile."""
    context = new_context(service_workers="block", **options)
    context.add_init_script(PYTHON_NEVER_STARTS)
    return context


@pytest.mark.parametrize("width", [320, 1280])
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_every_kind_of_page(served: str, new_context: NewContext, scheme: str, width: int) -> None:
    page = still(new_context, viewport={"width": width, "height": 800}, color_scheme=scheme).new_page()
    found = {}
    for name in KINDS:
        page.goto(served + name)
        page.wait_for_load_state("load")
        if (scheme, width) != WHOLE:
            page.evaluate(CUT_LONG_TABLES, LIKE_ROWS)
        found[name] = violations(page)
    assert {name: wrong for name, wrong in found.items() if wrong} == {}


@pytest.mark.parametrize(("scheme", "width"), [("light", 320), ("dark", 1280)])
def test_every_kind_of_answer(served: str, new_context: NewContext, scheme: str, width: int) -> None:
    """Worksheets that have answered: what the script builds stands on the page, and none of it is hidden."""
    page = new_context(viewport={"width": width, "height": 800}, color_scheme=scheme).new_page()
    found = {}
    for name in (one for one in KINDS if one in SHEETS):
        page.goto(f"{served}{name}#example")
        expect(page.locator(ANSWERED)).to_be_attached()
        found[name] = violations(page)
    assert len(found) >= 3
    assert {name: wrong for name, wrong in found.items() if wrong} == {}


PARTS = 6
"""The pages are looked at in so many parts, so that several workers share them."""


@pytest.mark.parametrize("part", range(PARTS))
def test_every_page_at_phone_width(served: str, site: Path, new_context: NewContext, part: int) -> None:
    page = still(new_context, viewport={"width": 320, "height": 800}).new_page()
    found = {}
    for name in pages(site)[part::PARTS]:
        page.goto(served + name)
        too_wide = page.evaluate("document.documentElement.scrollWidth - innerWidth")
        page.evaluate(CUT_LONG_TABLES, LIKE_ROWS)
        found[name] = violations(page) + ([f"the page is {too_wide} px too wide"] if too_wide > 0 else [])
    assert len(found) >= 10
    assert {name: wrong for name, wrong in found.items() if wrong} == {}


OUTLINES = """[...document.querySelectorAll('calc-sheet .choices label')].map((label) => {
  const { outlineStyle, outlineWidth } = getComputedStyle(label);
  return [label.querySelector('input').checked, `${outlineStyle} ${outlineWidth}`];
})"""


def test_forced_colors_still_show_what_is_chosen(served: str, new_context: NewContext) -> None:
    """Where the device forces its own colors, the color of a chosen button says nothing: its outline does."""
    page = new_context(viewport={"width": 414, "height": 900}, forced_colors="active").new_page()
    page.goto(f"{served}work-out/sling-legs.html#example")
    page.locator("calc-sheet .choices input:checked").first.wait_for(state="attached")
    found = page.evaluate(OUTLINES)
    assert {outline for is_chosen, outline in found if is_chosen} == {"solid 3px"}
    assert all(outline.startswith("none") for is_chosen, outline in found if not is_chosen)
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_states_of_a_page(served: str, new_context: NewContext, scheme: str) -> None:
    """A pinned value, answers under the search box, and a refused input."""
    page = new_context(viewport={"width": 320, "height": 800}, color_scheme=scheme).new_page()
    page.goto(served + "look-up/chain-tie-down.html")
    page.click("table.data tbody tr:nth-child(3) td:nth-of-type(3) a")
    page.wait_for_selector("[data-pin]:not([hidden])")
    assert violations(page) == []
    page.goto(served + "index.html")
    page.fill("#ask-box", "3/8 g70")
    page.wait_for_selector(".ask .found")
    assert violations(page) == []
    page.goto(served + "look-up/densities.html")
    page.locator("#find-box").press_sequentially("shackle")
    page.wait_for_selector(".find .found")
    page.keyboard.press("ArrowDown")
    assert violations(page) == []
    page.goto(served + "work-out/sling-legs.html")
    page.wait_for_selector('calc-sheet[data-state="live"]')
    page.fill("[name=load]", "heavy")
    page.wait_for_selector('[data-error="load"]:not([hidden])')
    assert violations(page) == []


def test_a_press_of_a_letter_does_not_leave_the_page(served: str, new_context: NewContext) -> None:
    """WCAG 2.2 success criterion 2.1.4: no single-letter commands."""
    page = new_context().new_page()
    page.goto(served + "look-up/chain-tie-down.html")
    for key in "fspn,./":
        page.keyboard.press(key)
    assert page.url == served + "look-up/chain-tie-down.html"
    assert page.evaluate("document.activeElement.id") != "find-box"


def test_keyboard_reaches_the_content_first_by_the_skip_link(served: str, new_context: NewContext) -> None:
    page = new_context().new_page()
    page.goto(served + "look-up/chain-tie-down.html")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.matches('.skip')")
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    assert page.evaluate("!!document.activeElement.closest('main')")
