"""What a browser does with boxes and pages behind the page's back: an answer still stands beside its own inputs alone."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from playwright.sync_api import Page, Playwright, expect

from tests.browser.conftest import ANSWERED, Watch, hold, launched, own
from tests.browser.faults import fields, right_headline

SLING = own("sling-legs")
SHEET = "work-out/sling-legs.html"


@pytest.mark.parametrize("moment", ["pageshow", "focus", "visibilitychange", "beforeprint"])
def test_boxes_that_the_browser_changed_are_read_again(page: Page, served: str, moment: str) -> None:
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    target = "document" if moment == "visibilitychange" else "globalThis"
    gone = page.evaluate(
        f"""() => {{
          document.querySelector('[name="load"]').value = "9,137 lb";
          {target}.dispatchEvent(new Event("{moment}"));
          return document.querySelector("[data-verdict-word]").textContent;
        }}"""
    )
    assert gone == ""  # at once: what comes next may be paper
    expect(page.locator("[data-headline]")).to_have_text(right_headline("9,137 lb"))
    assert "load=9%2C137+lb" in page.url


def test_numbers_typed_before_the_script_came_are_kept_and_worked_out(page: Page, served: str) -> None:
    held = hold(page, "**/runtime/linkwright.js")
    page.goto(served + f"{SHEET}#{fields('4,860 lb')}", wait_until="commit")
    page.locator("footer").wait_for(state="attached")
    page.fill('[name="load"]', "9,137 lb")
    expect(page.locator(".not-started-head")).to_be_visible()
    assert page.locator("[data-verdict-word]:visible").count() == 0
    for route in held:
        route.continue_()
    expect(page.locator("[data-headline]")).to_have_text(right_headline("9,137 lb"))
    assert page.input_value('[name="load"]') == "9,137 lb"
    assert "load=9%2C137+lb" in page.url


def test_what_is_typed_while_another_page_is_on_its_way_stays_with_its_own(page: Page, served: str) -> None:
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    held = hold(page, "**/load-weight.html")
    page.locator('a[href$="load-weight.html"]').first.click()
    page.wait_for_url("**/load-weight.html")
    page.fill('[name="load"]', "9,137 lb")
    expect(page.locator("[data-headline]")).to_have_text(right_headline("9,137 lb"))
    assert page.url.endswith("/load-weight.html")
    for route in held:
        route.continue_()
    page.locator('calc-sheet[data-sheet="load-weight"]').wait_for(state="attached")
    expect(page.locator("calc-sheet")).to_have_attribute("data-mode", "empty")


def test_the_last_of_several_quick_turns_wins_under_its_own_address(page: Page, served: str) -> None:
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    held = hold(page, "**/hitch.html")
    page.evaluate(
        """() => {
          for (const name of ["hitch", "load-weight"]) document.querySelector(`a[href$="${name}.html"]`).click();
        }"""
    )
    page.locator('calc-sheet[data-sheet="load-weight"]').wait_for(state="attached")
    for route in held:
        route.continue_()
    page.wait_for_timeout(300)
    assert page.get_attribute("calc-sheet", "data-sheet") == "load-weight"
    assert page.url.endswith("/load-weight.html")


def test_back_brings_the_focus_to_the_link_that_was_left(page: Page, served: str) -> None:
    page.goto(served + "work-out/index.html")
    page.wait_for_load_state("networkidle")
    page.locator('main a[href$="sling-legs.html"]').first.click()
    page.locator("calc-sheet").wait_for(state="attached")
    page.go_back()
    page.locator("calc-sheet").wait_for(state="detached")
    assert str(page.evaluate("document.activeElement.getAttribute('href')")).endswith("sling-legs.html")


def test_a_fragment_that_is_no_name_does_no_harm(page: Page, served: str, watch: Watch) -> None:
    page.goto(served + "work-out/sling-legs.html#%")
    expect(page.locator("calc-sheet")).to_have_attribute("data-state", "live")
    page.goto(served + "look-up/chain-lifting.html#%")
    page.wait_for_load_state("networkidle")
    assert watch.errors == []


# ---- a page that the browser kept whole and shows again

NOTE_RETURN = """
addEventListener("pageshow", (event) => {
  globalThis.cameBackWhole = event.persisted;
  if (event.persisted) BEHIND
});
"""
LEAVE = "void setTimeout(() => { location.href = new URL('../assets/mark.svg', location.href).href; })"


@pytest.fixture
def kept_whole(playwright: Playwright) -> Iterator[Page]:
    """A page of a browser that keeps pages whole, as those of readers do and the driver forbids."""
    browser = launched(playwright, without=["--disable-back-forward-cache"])
    page = browser.new_context().new_page()
    page.set_default_timeout(60_000)
    yield page
    browser.close()


def go_away_and_back(page: Page) -> None:
    """Leave for a file that is no page of the book, by the browser itself, and come back by its Back."""
    page.evaluate("globalThis.isSamePage = true")
    page.evaluate(LEAVE)
    page.wait_for_url("**/mark.svg")
    page.go_back(wait_until="commit")
    page.wait_for_function("location.pathname.endsWith('sling-legs.html')")
    assert page.evaluate("[globalThis.isSamePage, globalThis.cameBackWhole]") == [True, True]


@pytest.mark.parametrize("behind", ["", "2,220 lb", "untouched"])
def test_a_page_that_is_brought_back_whole_holds_what_was_typed(
    kept_whole: Page, served: str, behind: str
) -> None:
    """A browser may then empty a box, or write another value, without a word: what the reader typed is put back."""
    page = kept_whole
    change = "" if behind == "untouched" else f"document.querySelector('[name=load]').value = '{behind}';"
    page.add_init_script(NOTE_RETURN.replace("BEHIND", f"setTimeout(() => {{ {change} }}, 20);"))
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    page.fill('[name="load"]', "9,137 lb")
    expect(page.locator("[data-headline]")).to_have_text(right_headline("9,137 lb"))
    go_away_and_back(page)
    page.wait_for_timeout(1500)  # the last look at the boxes is over
    expect(page.locator("[data-headline]")).to_have_text(right_headline("9,137 lb"))
    assert page.input_value('[name="load"]') == "9,137 lb"
    assert "load=9%2C137+lb" in page.url
    page.fill('[name="load"]', "8,765 lb")
    expect(page.locator("[data-headline]")).to_have_text(right_headline("8,765 lb"))
    assert page.evaluate("linkwright.python.workersMade") == 1


def test_a_page_that_was_left_before_its_answer_came_answers_what_was_typed(
    kept_whole: Page, served: str
) -> None:
    page = kept_whole
    page.add_init_script(NOTE_RETURN.replace("BEHIND", "{}"))
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    page.fill('[name="load"]', "9,137 lb")
    go_away_and_back(page)
    expect(page.locator("[data-headline]")).to_have_text(right_headline("9,137 lb"))
    assert page.input_value('[name="load"]') == "9,137 lb"
