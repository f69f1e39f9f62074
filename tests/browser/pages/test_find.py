"""The one search in a browser: on the home page and in the head, by touch and by keyboard, served and from disk."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from build_scripts import serve
from tests.browser.conftest import serving

NewContext = Callable[..., BrowserContext]


@pytest.mark.parametrize("disk", [False, True])
@pytest.mark.parametrize(
    ("page_name", "box"), [("index.html", "#ask-box"), ("look-up/densities.html", "#find-box")]
)
def test_one_search_everywhere(
    served: str, site: Path, page: Page, disk: bool, page_name: str, box: str
) -> None:
    """49 CFR 393.108 prints 6,600 lb for grade 70 of 3/8 in."""
    page.goto((site / page_name).as_uri() if disk else served + page_name)
    page.fill(box, "three eighths g70")
    first = page.locator("[role=option]:visible").first
    expect(first).to_contain_text("Chain, grade 70 (transport), 3/8 in")
    expect(first.locator(".found-value")).to_contain_text("6,600 lb")
    expect(first).to_contain_text("never lifting")
    assert page.locator("[role=option]:visible").count() == 3
    first.click()
    expect(page.locator("[data-pin]:visible")).to_contain_text("6,600 lb")
    expect(page.locator(".find-panel")).to_be_hidden()


def test_by_keyboard_alone(served: str, page: Page) -> None:
    page.goto(served + "index.html")
    box = page.locator("#ask-box")
    box.press_sequentially("bent hook")
    options = page.locator(".ask [role=option]")
    expect(box).to_have_attribute("aria-expanded", "true")
    expect(box).to_have_attribute("role", "combobox")
    expect(page.locator(f"#{box.get_attribute('aria-controls')}")).to_have_attribute("role", "listbox")
    box.press("ArrowDown")
    box.press("ArrowDown")
    expect(options.nth(1)).to_have_attribute("aria-selected", "true")
    expect(box).to_have_attribute("aria-activedescendant", str(options.nth(1).get_attribute("id")))
    box.press("ArrowUp")
    expect(options.nth(0)).to_have_attribute("aria-selected", "true")
    box.press("Escape")
    expect(box).to_have_attribute("aria-expanded", "false")
    expect(options.first).to_be_hidden()
    box.press_sequentially(" ")
    expect(options.first).to_be_visible()
    box.press("Enter")
    expect(page).to_have_url(f"{served}judge/inspect-a-hook.html")


def test_more_are_shown_on_request_and_a_part_can_be_chosen(served: str, page: Page) -> None:
    page.goto(served + "index.html")
    page.fill("#ask-box", "shackle 5/8")
    page.locator(".ask .found-more").click()
    assert page.locator(".ask [role=option]:visible").count() > 3
    expect(page.locator(".ask .found-more")).to_be_hidden()
    page.fill("#ask-box", "5/8")
    page.locator(".ask [role=option]", has_text="Eyebolt").or_(
        page.locator(".ask [role=option]", has_text="eyebolt")
    ).first.click()
    expect(page.locator("#ask-box")).to_have_value("eyebolt 5/8 in")
    expect(page.locator(".ask .found-value").first).to_contain_text("2,940 lb")


def test_it_comes_when_it_is_used_and_holds_after_pages_turn(served: str, page: Page) -> None:
    """What it knows is the heaviest part of a page, and most readers never search."""
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url.removeprefix(served)))
    page.goto(served + "understand/why-angle-multiplies-pull.html")
    page.wait_for_load_state("networkidle")
    assert [one for one in asked if one.startswith("scripts/search")] == []
    page.locator(".page a[href$='sling-legs.html']").first.click()
    expect(page.locator('main[data-door-now="work-out"]')).to_be_attached()
    page.locator("#find-box").press_sequentially("throat limit")
    expect(page.locator(".find .found").first).to_contain_text("hook")
    assert "scripts/search-data.js" in asked
    page.locator(".find .found").first.click()
    expect(page.locator(".find-panel")).to_be_hidden()
    expect(page.locator("#find-box")).to_have_value("")


def test_no_text_reaches_a_place_that_could_run_it(site: Path, page: Page) -> None:
    """With trusted types required, a text put where a script could be made of it is refused: the search needs no such."""
    policy = serve.CONTENT_POLICY
    refused: list[str] = []
    page.on("console", lambda message: refused.append(message.text) if "rusted" in message.text else None)
    with serving(site, policy) as address:
        page.goto(address + "index.html")
        page.fill("#ask-box", "3/8 g70 <img src=x onerror=alert(1)>")
        expect(page.locator(".ask .found-line")).not_to_be_empty()
        page.fill("#ask-box", "3/8 g70")
        expect(page.locator(".ask .found-value").first).to_contain_text("6,600 lb")
    assert refused == []


def test_answers_can_be_hit_with_a_glove(served: str, new_context: NewContext) -> None:
    page = new_context(viewport={"width": 320, "height": 640}, color_scheme="dark").new_page()
    page.goto(served + "index.html")
    page.fill("#ask-box", "shackle 5/8")
    page.locator(".ask .found").first.wait_for()
    for target in page.locator(".ask :is(.found:not([hidden]), button:visible)").all():
        box = target.bounding_box()
        assert box is not None
        assert box["height"] >= 44
        assert box["width"] >= 44
    assert page.evaluate("document.documentElement.scrollWidth") == 320


def test_the_home_page_keeps_what_was_used_last_on_the_device(served: str, page: Page) -> None:
    page.goto(served + "index.html")
    expect(page.locator("[data-last-used]")).to_be_hidden()
    page.goto(served + "look-up/shackles.html")
    page.goto(served + "judge/inspect-a-hook.html")
    page.goto(served + "about/how-to-use.html")
    page.goto(served + "index.html")
    links = page.locator("[data-last-used] a")
    expect(links).to_have_count(2)
    expect(links.first).to_have_attribute("href", f"{served}judge/inspect-a-hook.html")
    assert page.evaluate("Object.keys(localStorage).filter((k) => k.includes('last'))") == ["linkwright.last"]


def test_a_worksheet_opens_with_what_was_typed_and_answers(served: str, page: Page) -> None:
    """Two legs at 60 degrees, each 1,500 lb / 2 / sin 60 degrees = 866.0 lb; the book rounds a pull up."""
    page.goto(served + "index.html")
    page.fill("#ask-box", "2 leg sling 60 degrees 1500 lb")
    first = page.locator(".ask [role=option]:visible").first
    expect(first).to_contain_text("Opens with 1500 lb, 2 legs, 60° from the horizontal")
    first.click()
    expect(page.locator("[name=load]")).to_have_value("1500 lb")
    expect(page.locator("calc-sheet")).to_have_attribute("data-state", "live")
    expect(page.locator("calc-sheet")).to_contain_text("867 lb")
    expect(page.locator("[name=leg_rating]")).to_have_value("")
